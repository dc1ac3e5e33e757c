import { spawn } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { overlapping, sound } from './logs.ts';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'drillhand-cli-'));
const program = path.join(folder, 'program.mjs');

const bundledRequire =
  "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);";

beforeAll(async () => {
  await build({
    absWorkingDir: root,
    entryPoints: ['server/cli/main.ts'],
    outfile: program,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    mainFields: ['module', 'main'],
    banner: { js: bundledRequire },
    logLevel: 'warning',
  });
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Ran {
  readonly code: number | null;
  readonly output: string;
  readonly errors: string;
}

/** Runs the program in a process of its own; `closeEarly` stops reading what it prints at once. */
function run(args: string[], { cwd = folder, input = '', env = {}, closeEarly = false } = {}): Promise<Ran> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [program, ...args], { cwd, env: { ...process.env, ...env } });
    const kept = { output: '', errors: '' };
    if (closeEarly) child.stdout.destroy();
    else child.stdout.setEncoding('utf8').on('data', (text) => (kept.output += text));
    child.stderr.setEncoding('utf8').on('data', (text) => (kept.errors += text));
    child.on('close', (code) => resolve({ code, ...kept }));
    child.stdin.on('error', () => undefined).end(input);
  });
}

const place = (name: string, content: string): string => {
  const file = path.join(folder, name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, content);
  return file;
};

describe('the program as a process', () => {
  test('finds logs in folders and by pattern, node_modules aside', async () => {
    place('one/a.well', sound);
    place('one/deep/b.well', overlapping);
    place('one/node_modules/c.well', overlapping);
    const names = async (given: string) =>
      JSON.parse((await run(['check', given, '--format', 'json'])).output).map(({ file }: { file: string }) => file);
    expect(await names('one')).toEqual([path.join('one', 'a.well'), path.join('one', 'deep', 'b.well')]);
    expect(await names('one/**/*.well')).toEqual(['one/a.well', 'one/deep/b.well']);
  });

  test('reads standard input, and ends with what it found', async () => {
    expect(await run(['check', '-'], { input: overlapping })).toMatchObject({ code: 1, errors: '' });
    expect(await run(['check', '-'], { input: sound })).toMatchObject({ code: 0, output: 'no findings in 1 file\n' });
  });

  test('speaks English whatever the language of the machine', async () => {
    const env = { LANG: 'fr_CA.UTF-8', LC_ALL: 'fr_CA.UTF-8', LANGUAGE: 'fr_CA:fr' };
    const { output } = await run(['check', '-'], { input: overlapping, env });
    expect(output).toContain('strata 4 – 9 m begins above the base of 0 – 6 m: 4 – 6 m is logged twice');
    const record = (given: object) => run(['record', '-', '--format', 'html'], { input: overlapping, env: given });
    const inFrench = await record(env);
    expect(inFrench.output).toContain('4 – 6 m is logged twice');
    expect(inFrench).toEqual(await record({}));
  });

  test('takes the day from the environment', async () => {
    const input = 'began 2026-06-01\n';
    const env = { DRILLHAND_TODAY: '2026-01-01' };
    expect((await run(['check', '-'], { input, env })).output).toContain('dates-out-of-order');
  });

  test('replaces a file as a whole, with its permissions and nothing left beside it', async () => {
    const file = place('two/a.well', 'strata\n0-3 cl');
    chmodSync(file, 0o640);
    expect(await run(['format', '--write', file])).toMatchObject({ code: 0, output: `${file}\n`, errors: '' });
    expect(readFileSync(file, 'utf8')).toBe('strata\n  0    - 3      clay');
    expect(statSync(file).mode & 0o777).toBe(0o640);
    expect(readdirSync(path.dirname(file))).toEqual(['a.well']);
  });

  test('a drawing that cannot be written is one message', async () => {
    const file = place('three/a.well', sound);
    const { code, errors } = await run(['draw', file, '-o', path.join(folder, 'no', 'such', 'a.svg')]);
    expect(code).toBe(2);
    expect(errors).toMatch(/^drillhand: .*a\.svg: not written: no such file or folder\n$/);
  });

  test('a reader that goes away is no fault', async () => {
    const { code, errors } = await run(['schema', 'record'], { closeEarly: true });
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
  });

  test('a folder given as a file is one message', async () => {
    place('four/notes.txt', '');
    expect(await run(['record', 'four'])).toMatchObject({
      code: 2,
      errors: 'drillhand: four: no .well file in this folder\n',
    });
  });
});
