import { describe, expect, test } from 'vitest';
import { drillhand, messages } from './fake-world.ts';
import { gapped, overlapping, sound } from './logs.ts';

describe('the outcome of a check', () => {
  test.each([
    ['a clean log', ['check', 'a.well'], sound, 0],
    ['an error', ['check', 'a.well'], overlapping, 1],
    ['a warning is let pass', ['check', 'a.well'], gapped, 0],
    ['a warning, asked for', ['check', 'a.well', '--fail-on', 'warning'], gapped, 1],
    ['an error, whatever it is', ['check', 'a.well', '--fail-on=never'], overlapping, 0],
  ])('%s', async (_, args, text, code) => {
    expect((await drillhand(args, { 'a.well': text })).code).toBe(code);
  });

  test('an unreadable file outweighs findings, and the others are still checked', async () => {
    const { code, output, errors } = await drillhand(['check', 'gone.well', 'a.well'], { 'a.well': overlapping });
    expect(code).toBe(2);
    expect(errors).toBe('drillhand: gone.well: no such file or folder\n');
    expect(output).toContain('a.well:3:3: error interval-overlap: ');
  });
});

describe('the text report', () => {
  test('shows place, severity, rule, message, source line, related place and a count', async () => {
    const { output } = await drillhand(['check', 'a.well'], { 'a.well': overlapping });
    const [head, source, caret, related, blank, closing] = output.split('\n');
    expect(head).toMatch(/^a\.well:3:3: error interval-overlap: \S.*$/);
    expect(source).toBe('    3 |   4 - 9 sand');
    expect(caret).toMatch(/^ {5} | {3}\^+$/);
    expect(related).toMatch(/^ {6}= a\.well:2:\d+: \S/);
    expect(blank).toBe('');
    expect(closing).toBe('1 error in 1 file');
  });

  test('says so where nothing was found', async () => {
    expect((await drillhand(['check', 'a.well'], { 'a.well': sound })).output).toBe('no findings in 1 file\n');
  });

  test('colours only a terminal', async () => {
    const files = { 'a.well': overlapping };
    expect((await drillhand(['check', 'a.well'], files)).output).not.toContain('\u001b');
    expect((await drillhand(['check', 'a.well'], files, { colour: true })).output).toContain(
      '\u001b[31merror\u001b[0m',
    );
  });

  test('a log cannot steer the terminal', async () => {
    const { output } = await drillhand(['check', 'a.well'], { 'a.well': 'strata\n0 - 6 \u001b[2Jzorgly\u202e\n' });
    expect(output).toContain('zorgly');
    for (const steering of ['\u001b', '\u202e']) expect(output).not.toContain(steering);
  });

  test('a long line is cut around the stretch, and the caret stands under it', async () => {
    const text = `strata\n  0 - 6 clay${' '.repeat(300)}zorgly${' '.repeat(300)}; end\n`;
    const { output } = await drillhand(['check', 'a.well'], { 'a.well': text });
    const lines = output.split('\n');
    const at = lines.findIndex((line) => line.includes('unknown-term'));
    const [source = '', caret = ''] = lines.slice(at + 1, at + 3);
    expect(source.length).toBeLessThan(120);
    expect(caret.indexOf('^')).toBe(source.indexOf('zorgly'));
    expect(caret.match(/\^/g)).toHaveLength('zorgly'.length);
  });
});

describe('what is checked', () => {
  const files = { 'logs/a.well': sound, 'logs/deep/b.well': overlapping, 'logs/notes.txt': 'no log' };

  test.each([
    ['a folder, and the folders in it', ['logs'], ['logs/a.well', 'logs/deep/b.well']],
    ['a pattern', ['logs/*.well'], ['logs/a.well']],
    ['several', ['logs/deep/b.well', 'logs/a.well'], ['logs/deep/b.well', 'logs/a.well']],
    ['each file once', ['logs', 'logs/a.well'], ['logs/a.well', 'logs/deep/b.well']],
  ])('%s', async (_, names, expected) => {
    const { output } = await drillhand(['check', ...names, '--format', 'json'], files);
    expect(JSON.parse(output).map(({ file }: { file: string }) => file)).toEqual(expected);
  });

  test('standard input', async () => {
    const { code, output } = await drillhand(['check', '-'], {}, { input: overlapping });
    expect(code).toBe(1);
    expect(output).toContain('<stdin>:3:3: error');
  });

  test.each([
    ['a folder without logs', ['empty'], 'drillhand: empty: no .well file in this folder\n'],
    ['a pattern that matches nothing', ['*.wel'], 'drillhand: *.wel: no file matches this pattern\n'],
    ['nothing named', [], 'drillhand: name a file, a folder or a pattern, or "-" for standard input\n'],
  ])('%s', async (_, names, message) => {
    const { code, errors } = await drillhand(['check', ...names], { 'empty/notes.txt': '' });
    expect({ code, errors }).toEqual({ code: 2, errors: message });
  });
});

describe('the day', () => {
  const log = 'began 2026-06-01\nfinished 2026-06-02\n';
  const future = async (args: string[], today: string) =>
    (await drillhand(['check', 'a.well', ...args], { 'a.well': log }, { today })).output.includes('dates-out-of-order');

  test('comes from the world, and an option outweighs it', async () => {
    expect(await future([], '2026-01-01')).toBe(true);
    expect(await future([], '2026-12-31')).toBe(false);
    expect(await future(['--today', '2026-01-01'], '2026-12-31')).toBe(true);
  });

  test.each([
    ['2026-02-30', '--today'],
    ['tomorrow', '--today'],
  ])('%s is no day', async (day, where) => {
    const { code, errors } = await drillhand(['check', 'a.well', '--today', day], { 'a.well': log });
    expect(code).toBe(2);
    expect(errors).toBe(`drillhand: ${where} takes a day of the calendar as YYYY-MM-DD; "${day}" is none\n`);
  });

  test('a bad day in the environment is told', async () => {
    const { code, errors } = await drillhand(['check', 'a.well'], { 'a.well': log }, { today: '26-1-1' });
    expect(code).toBe(2);
    expect(errors).toContain('DRILLHAND_TODAY takes a day');
    expect(messages(errors)).toBe(1);
  });
});
