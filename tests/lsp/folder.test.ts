import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import type { FolderWells } from '../../server/lsp/protocol.ts';
import { type Editor, editorsOfTests } from './editor.ts';

const startEditor = editorsOfTests();
let editor: Editor;
let root: string;

const addressOf = (name: string): string => pathToFileURL(path.join(root, name)).href;

function write(name: string, text: string): void {
  mkdirSync(path.dirname(path.join(root, name)), { recursive: true });
  writeFileSync(path.join(root, name), text);
}

const created = 1;
const changed = 2;
const deleted = 3;

const tell = (name: string, type: number): Promise<void> =>
  editor.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: addressOf(name), type }] });

async function save(name: string, text: string): Promise<void> {
  write(name, text);
  await tell(name, changed);
}

const begin = (): Promise<unknown> =>
  editor.beginIn(pathToFileURL(root).href, { workspace: { configuration: true, workspaceFolders: true } });

const rulesOf = (diagnostics: readonly Diagnostic[]): string[] => diagnostics.map(({ code }) => String(code)).sort();

const latest = (name: string): readonly Diagnostic[] =>
  editor.reports.findLast(({ uri }) => uri === addressOf(name))?.diagnostics ?? [];

const untilRules = (name: string, rules: readonly string[]): Promise<void> =>
  editor.until(
    () => editor.reports.some(({ uri }) => uri === addressOf(name)) && rulesOf(latest(name)).join() === rules.join(),
    `${name}: ${rules.join() || 'nothing'}; it has ${rulesOf(latest(name))}`,
  );

const untilMessage = (name: string, words: RegExp): Promise<void> =>
  editor.until(
    () => latest(name).some(({ message }) => words.test(typeof message === 'string' ? message : message.value)),
    `${name}: ${words}`,
  );

const wells = async (): Promise<FolderWells> => editor.request<FolderWells>('drillhand/folder', undefined);

async function untilWells(holds: (wells: FolderWells) => boolean): Promise<FolderWells> {
  const end = Date.now() + 20_000;
  for (;;) {
    const found = await wells();
    if (!found.isReading && holds(found)) return found;
    if (Date.now() > end) throw new Error(`waited too long for the wells: ${JSON.stringify(found)}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

const limit = { value: 0.6, unit: 'm', text: '60 cm', source: 'made up', known: 'read', date: null };
const fenPack = (value: number): string =>
  JSON.stringify({
    id: 'fen-1',
    title: 'Fen',
    notice: 'A help, not the law.',
    limits: { 'stickup-least': { ...limit, value, text: `${value * 100} cm` } },
  });
const low = 'rules fen-1\ncasing +0.4 - 30 pvc 114.3\n';
const gapped = 'strata\n  0 - 4 clay\n  5 - 9 sand\n';

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'drillhand-folder-'));
  editor = startEditor();
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

describe('packs of the workspace', () => {
  test('are known by their ids, wherever in the folder they stand, and read anew when they are saved', async () => {
    write('packs/fen.wellrules.json', fenPack(0.6));
    await begin();
    await editor.open(addressOf('logs/a.well'), low);
    await untilMessage('logs/a.well', /60 cm \(fen-1\)/);
    await save('packs/fen.wellrules.json', fenPack(0.3));
    await untilRules('logs/a.well', []);
  });

  test('hover tells the limit that the finding rests on', async () => {
    write('fen.wellrules.json', fenPack(0.6));
    await begin();
    await editor.open(addressOf('a.well'), low);
    await untilMessage('a.well', /60 cm \(fen-1\)/);
    const [finding] = latest('a.well');
    const hover = await editor.request<{ contents: { value: string } }>('textDocument/hover', {
      textDocument: { uri: addressOf('a.well') },
      position: finding?.range.start,
    });
    expect(hover.contents.value).toContain('Limit of `fen-1`: 60 cm (made up');
  });

  test('a broken one is told in its own file, the log that names it has one finding, and both go when it is mended', async () => {
    write('fen.wellrules.json', '{\n "id": "fen-1",\n "title": 3\n}');
    await begin();
    await editor.open(addressOf('a.well'), `${low}${gapped}`);
    await untilRules('a.well', ['interval-gap', 'unknown-pack']);
    expect(latest('fen.wellrules.json')[0]).toMatchObject({
      range: { start: { line: 2, character: 10 }, end: { line: 2, character: 11 } },
      severity: 1,
    });
    expect(latest('a.well').find(({ code }) => code === 'unknown-pack')?.message).toContain('fen.wellrules.json:3:11');
    await save('fen.wellrules.json', fenPack(0.6));
    await untilRules('a.well', ['interval-gap', 'stickup-low']);
    await untilRules('fen.wellrules.json', []);
  });

  test('come and go with their files', async () => {
    await begin();
    await editor.open(addressOf('a.well'), low);
    await untilRules('a.well', ['unknown-pack']);
    write('fen.wellrules.json', fenPack(0.6));
    await tell('fen.wellrules.json', created);
    await untilRules('a.well', ['stickup-low']);
    rmSync(path.join(root, 'fen.wellrules.json'));
    await tell('fen.wellrules.json', deleted);
    await untilRules('a.well', ['unknown-pack']);
  });

  test('are offered on the line of the rules', async () => {
    write('fen.wellrules.json', fenPack(0.6));
    await begin();
    await editor.open(addressOf('a.well'), 'rules \n');
    await editor.report(addressOf('a.well'), 1);
    const list = await editor.request<{ items: { label: string }[] }>('textDocument/completion', {
      textDocument: { uri: addressOf('a.well') },
      position: { line: 0, character: 6 },
    });
    expect(list.items.map(({ label }) => label)).toContain('fen-1');
  });
});

describe('a drillhand.json', () => {
  test('comes before the settings of the editor, is read anew when saved, and lets them speak when it is gone', async () => {
    editor.settings = { rules: { severity: { 'interval-gap': 'error' } } };
    write('drillhand.json', '{"rules": {"interval-gap": "hint"}}');
    await begin();
    await editor.open(addressOf('logs/a.well'), gapped);
    const severity = () => latest('logs/a.well')[0]?.severity;
    await editor.until(() => severity() === 4, 'a hint');
    await save('drillhand.json', '{"rules": {"interval-gap": "information"}}');
    await editor.until(() => severity() === 3, 'an information');
    rmSync(path.join(root, 'drillhand.json'));
    await tell('drillhand.json', deleted);
    await editor.until(() => severity() === 1, 'an error');
  });

  test('tells what it does not know at its place, with near names, and no more once it is mended', async () => {
    write('drillhand.json', '{\n  "rules": {"mising-shoe": "off"},\n  "packs": ["generl"]\n}');
    await begin();
    await editor.until(() => latest('drillhand.json').length === 2, 'two faults');
    expect(latest('drillhand.json').map(({ range, message }) => [range.start, message])).toEqual([
      [{ line: 1, character: 12 }, 'rules.mising-shoe: there is no such key; did you mean missing-shoe?'],
      [{ line: 2, character: 12 }, 'packs.0: there is no rule pack "generl"; did you mean general?'],
    ]);
    await save('drillhand.json', '{}');
    await untilRules('drillhand.json', []);
  });

  test('what the settings of the editor do not know is told once, as a warning', async () => {
    editor.settings = { rules: { severity: { 'mising-shoe': 'off' } } };
    await begin();
    await editor.open(addressOf('a.well'), gapped);
    await editor.open(addressOf('b.well'), gapped);
    await untilRules('b.well', ['interval-gap']);
    const warnings = editor.notes.filter(({ method }) => method === 'window/showMessage');
    expect(warnings.map(({ params }) => params)).toEqual([
      { type: 2, message: 'drillhand.rules.severity: there is no rule "mising-shoe"; did you mean missing-shoe?' },
    ]);
  });
});

describe('the logs of a folder', () => {
  test('the rules of the folder speak in the open log, with the place in the other file', async () => {
    write('b.well', '# b\nwell KH-3\n');
    await begin();
    await editor.open(addressOf('a.well'), 'well KH-3\n');
    await untilRules('a.well', ['well-id-twice']);
    const [finding] = latest('a.well');
    expect(finding?.relatedInformation?.[0]?.location).toEqual({
      uri: addressOf('b.well'),
      range: { start: { line: 1, character: 5 }, end: { line: 1, character: 9 } },
    });
    await editor.change(addressOf('a.well'), 2, [{ text: 'well KH-4\n' }]);
    await untilRules('a.well', []);
    await save('b.well', 'well KH-4\n');
    await untilRules('a.well', ['well-id-twice']);
    rmSync(path.join(root, 'b.well'));
    await tell('b.well', deleted);
    await untilRules('a.well', []);
  });

  test('an open log takes the place of its file until it is closed', async () => {
    write('a.well', 'well KH-3\n');
    await begin();
    await editor.open(addressOf('a.well'), 'well KH-9\n');
    await untilWells(({ wells: [first] }) => first?.label === 'KH-9');
    await editor.notify('textDocument/didClose', { textDocument: { uri: addressOf('a.well') } });
    await untilWells(({ wells: [first] }) => first?.label === 'KH-3');
  });

  test('the view has label, description, tooltip, state and facts of each, and what to sort by', async () => {
    write(
      'b.well',
      'well KH-3\nrules montana-36-21\nfinished 2020-01-02\nhole\n  0 - 61 152\nwater\n  level 4.2 2020-01-02\n',
    );
    write('deep/a.well', 'strata\n  4 - 2 clay\n');
    write('node_modules/x/c.well', 'well NO\n');
    write('.git/d.well', 'well NO\n');
    await begin();
    const found = await untilWells(({ wells: { length } }) => length > 0);
    expect(found.note).toBeNull();
    expect(found.wells.map(({ label, state }) => [label, state])).toEqual([
      ['KH-3', expect.stringMatching(/warnings|clean/)],
      ['a.well', 'errors'],
    ]);
    const [first] = found.wells;
    expect(first?.description).toMatch(/^61 m · /);
    expect(first?.facts.map(({ label, value }) => `${label}: ${value}`)).toEqual([
      'Depth: 61 m',
      'Static level: 4.2 m on 2020-01-02',
      expect.stringMatching(/^Due: record 2020-03-02 \(\d+ days over\)$/),
    ]);
    expect(first?.tooltip).toContain('KH-3 (b.well)');
    expect(first?.keys).toMatchObject({ id: 'KH-3', file: 'b.well', depth: 61, due: '2020-03-02' });
  });

  test('a change is told, so that the view can ask again', async () => {
    await begin();
    await untilWells(() => true);
    const told = () => editor.notes.filter(({ method }) => method === 'drillhand/folderChanged').length;
    const before = told();
    write('a.well', 'well KH-3\n');
    await tell('a.well', created);
    await editor.until(() => told() > before, 'the news');
    expect((await untilWells(({ wells: { length } }) => length === 1)).wells[0]?.label).toBe('KH-3');
  });
});
