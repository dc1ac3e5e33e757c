/**
 * `npm run benchmark -- keystrokes`: three samples typed in the real editor, as notation and as YAML with a schema made
 * from the same table, each with its own helps. One typist types both: it types a word, and takes it from the list as
 * soon as the list has it near the top and that takes fewer keys, those that go down to it counted; a date far down it
 * finds by its day. Where Tab puts in the unit or the label of the next value, it lets it. In the notation it knows the short forms; the YAML leaves out what the notation leaves out. The folder
 * holds the other samples in the same notation, as a folder of one crew does. What then stands in the editor is held against the sample. A key is a press: a letter,
 * Enter, Tab, or a chord. YAML's server runs in a small extension of the benchmark's own, with the settings of its usual one.
 */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { parseText } from '../../../grammar/index.ts';
import { meaningOf } from '../../../grammar/write.ts';
import { formatText } from '../../../server/features/format.ts';
import { ensureEditor } from '../../editor/editor.ts';
import { stagedExtension } from '../../editor/suite-in-host.ts';
import { openFile } from '../../editor/window/driver.ts';
import { startWorkbench } from '../../editor/workbench.ts';
import { againstAim, row, rule } from '../print.ts';
import { hurried } from './hurried.ts';
import { pieceAt } from './pieces.ts';
import { type Likeness, type PieceAt, type Typist, typeText } from './typist.ts';
import { yamlLines, yamlOf, yamlSchema } from './yaml.ts';
import { sureThatYamlHelps } from './yaml-helps.ts';

const samples = ['kestrel-hollow', 'heron-spring', 'otter-bridge'];
const bundles = path.resolve('.cache', 'keystrokes');
const yamlServer = path.resolve('node_modules', 'yaml-language-server', 'out', 'server', 'src', 'server.js');

async function bundle(name: string, outfile: string): Promise<void> {
  await build({
    entryPoints: [`tests/benchmark/keystrokes/extensions/${name}.ts`],
    outfile,
    ...{ bundle: true, format: 'cjs', platform: 'node', external: ['vscode'], logLevel: 'warning' },
  });
}

/** Starts the extension, and beside it the probe that tells what stands in the editor. */
const withProbe = (main: string): string =>
  [
    `const [own, probe] = [require('${main}'), require('./probe.cjs')];`,
    'exports.activate = async (context) => { probe.activate(context); await own.activate(context); };',
    'exports.deactivate = () => own.deactivate?.();',
  ].join('\n');

/** An extension with the probe in it, in a folder of its own. An editor takes in one such folder. */
async function probed(folder: string, manifest: object, main: string): Promise<string> {
  await bundle('probe', path.join(folder, 'probe.cjs'));
  writeFileSync(path.join(folder, 'probed.cjs'), withProbe(main));
  const start = { main: './probed.cjs', activationEvents: ['onStartupFinished'] };
  writeFileSync(path.join(folder, 'package.json'), JSON.stringify({ ...manifest, ...start }));
  return folder;
}

async function drillhandExtension(): Promise<string> {
  const folder = path.join(bundles, 'drillhand');
  rmSync(folder, { recursive: true, force: true });
  cpSync(stagedExtension, folder, { recursive: true });
  return probed(folder, JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')), './dist/client.cjs');
}

async function yamlExtension(): Promise<string> {
  const folder = path.join(bundles, 'yaml');
  await bundle('yaml', path.join(folder, 'yaml.cjs'));
  const manifest = { name: 'yaml', publisher: 'benchmark', version: '0.0.1', engines: { vscode: '^1.91.0' } };
  return probed(folder, manifest, './yaml.cjs');
}

interface Contender {
  readonly file: string;
  readonly extension: string;
  readonly lines: readonly string[];
  readonly likeness: Likeness;
  readonly pieceAt: PieceAt | null;
  /** The other logs of the folder, in the same notation, by their name. */
  readonly beside: Readonly<Record<string, string>>;
  readonly isRight: (text: string) => boolean;
}

const inOneBlank: Likeness = (text) =>
  text
    .trimStart()
    .replace(/\s*-\s*/g, '-')
    .replace(/[\s,]+/g, ' ');
const asItStands: Likeness = (text) => text;

/** What the log says, line by line, whatever its layout. */
const meanings = (text: string): string =>
  parseText(formatText(text))
    .lines.filter((line) => line.row !== null)
    .map((line) => meaningOf({ ...line, comment: null }))
    .join('\n');

const asYaml = (lines: readonly string[]): string => lines.map((line) => line.trimEnd()).join('\n');

const sampleText = (sample: string): string => readFileSync(path.join('samples', `${sample}.well`), 'utf8');

function contendersFor(sample: string, ownFolder: string, yamlFolder: string): readonly [Contender, Contender] {
  const text = sampleText(sample);
  const yaml = yamlLines(yamlOf(text));
  const others = samples.filter((other) => other !== sample);
  const ours = {
    ...{ file: `${sample}.well`, extension: ownFolder, lines: hurried(text), likeness: inOneBlank, pieceAt },
    beside: Object.fromEntries(others.map((other) => [`${other}.well`, sampleText(other)])),
  };
  const theirs = {
    ...{ file: `${sample}.yaml`, extension: yamlFolder, lines: yaml, likeness: asItStands, pieceAt: null },
    beside: Object.fromEntries(
      others.map((other) => [`${other}.yaml`, yamlLines(yamlOf(sampleText(other))).join('\n')]),
    ),
  };
  return [
    { ...ours, isRight: (typed) => meanings(typed) === meanings(text) },
    { ...theirs, isRight: (typed) => asYaml(typed.split('\n')) === asYaml(yaml) },
  ];
}

function workspaceFor({ file, beside }: Contender): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'drillhand-keystrokes-'));
  const settings = {
    'yaml.schemas': { './record.schema.json': '*.yaml' },
    'yaml.completion': true,
    '[yaml]': {
      'editor.quickSuggestions': { other: true, comments: false, strings: true },
      'editor.autoIndent': 'advanced',
      // As in the notation, so that Enter ends a line also while a list is open.
      'editor.acceptSuggestionOnEnter': 'off',
    },
  };
  mkdirSync(path.join(folder, '.vscode'));
  writeFileSync(path.join(folder, '.vscode', 'settings.json'), JSON.stringify(settings));
  writeFileSync(path.join(folder, 'record.schema.json'), JSON.stringify(yamlSchema()));
  for (const [name, text] of Object.entries({ ...beside, [file]: '' })) writeFileSync(path.join(folder, name), text);
  return folder;
}

/** What each line took, for who looks where keys are lost. */
const byLine = (lines: readonly string[], keys: readonly number[]): string =>
  lines.map((line, at) => `${String(keys[at]).padStart(4)}  ${line}\n`).join('');

/** Types one sample in one notation; the number of keys. Rejects where something else came to stand there. */
async function keysFor(contender: Contender): Promise<number> {
  const editor = await ensureEditor();
  const workspace = workspaceFor(contender);
  const stateFile = path.join(workspace, '..', `${path.basename(workspace)}.state.json`);
  process.env.DRILLHAND_KEYSTROKES_STATE = stateFile;
  process.env.DRILLHAND_KEYSTROKES_YAML = yamlServer;
  const workbench = await startWorkbench({ editor, workspace, extensionsFolder: null });
  try {
    await workbench.open([['extensionDevelopmentPath', workbench.uri(contender.extension)]]);
    const { page } = workbench;
    await page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: 60_000 });
    await openFile(page, contender.file);
    await page.locator('.monaco-editor .view-lines').first().click();
    await page.waitForTimeout(4000);
    const { likeness, pieceAt } = contender;
    const typist: Typist = { page, stateFile, likeness, pieceAt, keys: 0, perLine: [] };
    const { text } = await typeText(typist, contender.lines);
    writeFileSync(path.join(bundles, `${contender.file}.keys`), byLine(contender.lines, typist.perLine));
    if (contender.isRight(text)) return typist.keys;
    writeFileSync(path.join(bundles, `wrong-${contender.file}`), text);
    throw new Error(
      `${contender.file}: something else was typed with ${typist.keys} keys; see .cache/keystrokes/wrong-${contender.file}`,
    );
  } finally {
    await workbench.stop();
    for (const made of [workspace, stateFile]) rmSync(made, { recursive: true, force: true });
  }
}

/** The ratio that is aimed at, at most. */
const aim = 0.5;

interface Counted {
  readonly keys: number;
  readonly letters: number;
}

async function counted(contender: Contender): Promise<Counted> {
  const keys = await keysFor(contender);
  console.log(`  ${contender.file}: ${keys} keys`);
  return { keys, letters: contender.lines.join('\n').length };
}

const show = (name: string, ours: Counted, theirs: Counted): void =>
  row(
    name,
    ...[ours.keys, ours.letters].map(String),
    againstAim(ours.keys / theirs.keys, aim),
    ...[theirs.keys, theirs.letters].map(String),
  );

const sum = (all: readonly Counted[]): Counted =>
  all.reduce((a, b) => ({ keys: a.keys + b.keys, letters: a.letters + b.letters }), { keys: 0, letters: 0 });

/** Counts and prints, each sample and all of them together. */
export async function keystrokes(only: readonly string[]): Promise<void> {
  await sureThatYamlHelps(yamlSchema());
  const [ownFolder, yamlFolder] = [await drillhandExtension(), await yamlExtension()];
  row('sample', 'keys', 'letters', 'ratio', 'YAML keys', 'letters');
  rule();
  const pairs: (readonly [Counted, Counted])[] = [];
  for (const sample of samples.filter((each) => only.length === 0 || only.includes(each))) {
    const [ours, theirs] = contendersFor(sample, ownFolder, yamlFolder);
    const pair = [await counted(ours), await counted(theirs)] as const;
    show(sample, ...pair);
    pairs.push(pair);
  }
  show('together', sum(pairs.map(([ours]) => ours)), sum(pairs.map(([, theirs]) => theirs)));
}
