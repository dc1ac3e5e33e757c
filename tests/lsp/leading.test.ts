import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  DocumentHighlight,
  DocumentLink,
  FoldingRange,
  Location,
  Range,
  SelectionRange,
  SymbolInformation,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { editorOfTests, editorsOfTests } from './editor.ts';
import { about, openMarked, withEdits, withMarks } from './marked-log.ts';

const editor = editorOfTests({ textDocument: { foldingRange: { foldingRange: { collapsedText: true } } } });
const startEditor = editorsOfTests();

const plain = (marked: string): string => marked.replace(/\[\[|\]\]/g, '');
const withoutCursor = (marked: string): string => marked.replace('|', '');

/** What leans on the contact at 7.2 m, the base of the sand. */
const contact = [
  'hole',
  '  0 - [[7.2]] 254',
  '  [[-]] 61 152',
  'strata',
  '  0 - 6.1 clay',
  '  - [[7.2]] sand',
  '  [[-]] 61 limestone',
  'casing +0.45 - [[7.2]] steel 168.3',
  '  shoe [[7.|2]]',
  '  grout 0 - [[7.2]] neat cement',
  'water',
  '  [[7.2]] fresh, 25 L/min',
  '  level 7.2 2026-05-07',
].join('\n');

describe('a contact and the lines that lean on it', () => {
  test('are highlighted together', async () => {
    const marked = 'strata\n  0 - [[3.8]] clay\n  - 12 sand\ncasing 0 - [[3.|8]] steel\n  shoe [[3.8]]';
    const log = await openMarked(editor(), marked);
    const found = await editor().request<DocumentHighlight[]>('textDocument/documentHighlight', about(log));
    expect(
      withMarks(
        log,
        found.map(({ range }) => range),
      ),
    ).toBe(withoutCursor(marked));
  });

  test('the definition of the shoe, the grout or the water is the base of the layer', async () => {
    for (const place of ['shoe 7.|2', 'grout 0 - |7.2', '  |7.2 fresh']) {
      const log = await openMarked(editor(), plain(contact).replace('|', '').replace(place.replace('|', ''), place));
      const found = await editor().request<Location[]>('textDocument/definition', about(log));
      expect(
        found.map(({ range }) => range.start),
        place,
      ).toEqual([{ line: 5, character: 4 }]);
    }
  });

  test('its references are all that name it or begin at it', async () => {
    const log = await openMarked(editor(), contact);
    const context = { includeDeclaration: true };
    const found = await editor().request<Location[]>('textDocument/references', about(log, { context }));
    expect(
      withMarks(
        log,
        found.map(({ range }) => range),
      ),
    ).toBe(withoutCursor(contact));
  });
});

test('the selection grows from the word to the item, the line, the section and the file', async () => {
  const log = await openMarked(editor(), 'well A\nstrata\n  0 - 3 silty cl|ay, brown\n  - 4 sand\nnote x');
  const [innermost] = await editor().request<SelectionRange[]>('textDocument/selectionRange', {
    textDocument: { uri: log.uri },
    positions: [log.position],
  });
  const ranges: Range[] = [];
  for (let each = innermost; each !== undefined; each = each.parent) ranges.push(each.range);
  const shown = ranges.map((range) => withMarks(log, [range]));
  expect(shown[0]).toBe('well A\nstrata\n  0 - 3 silty [[clay]], brown\n  - 4 sand\nnote x');
  expect(shown.slice(1, 3)).toEqual([
    'well A\nstrata\n  0 - 3 [[silty clay]], brown\n  - 4 sand\nnote x',
    'well A\nstrata\n  0 - 3 [[silty clay, brown]]\n  - 4 sand\nnote x',
  ]);
  expect(shown.slice(-2)).toEqual([
    'well A\n[[strata\n  0 - 3 silty clay, brown\n  - 4 sand]]\nnote x',
    '[[well A\nstrata\n  0 - 3 silty clay, brown\n  - 4 sand\nnote x]]',
  ]);
});

test('pictures, packs and rules are links', async () => {
  const marked = 'rules [[general]]\nstrata\n  0 - 3 clay # allow [[interval-gap]]: seen\nphoto 3 [[seam.jpg]]\n';
  const other = startEditor();
  await other.request('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: {},
    initializationOptions: { pages: true },
  });
  await other.notify('initialized', {});
  const log = await openMarked(other, marked);
  const links = await other.request<DocumentLink[]>('textDocument/documentLink', about(log));
  expect(
    withMarks(
      log,
      links.map(({ range }) => range),
    ),
  ).toBe(marked);
  expect(links.map(({ target }) => target).toSorted()).toEqual([
    expect.stringMatching(/^drillhand-page:.*general/),
    expect.stringMatching(/^drillhand-page:.*interval-gap/),
    'file:///marked/seam.jpg',
  ]);
});

test('sections fold, and say what they come to', async () => {
  const log = await openMarked(editor(), '[[strata]]\n  0 - 3.8 clay\n  - 61 sand\n[[casing]] 0 - 7 steel\n  shoe 7');
  const folds = await editor().request<FoldingRange[]>('textDocument/foldingRange', about(log));
  expect(folds.map(({ startLine }) => startLine)).toEqual(log.ranges.map(({ start }) => start.line));
  expect(folds.map(({ endLine, collapsedText }) => [endLine, collapsedText])).toEqual([
    [2, '2 layers · down to 61 m'],
    [4, '7 m long'],
  ]);
});

describe('through the folder', () => {
  let folder: string;
  const here = () => pathToFileURL(folder).href;

  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'drillhand-leading-'));
    writeFileSync(
      path.join(folder, 'b.well'),
      'well KH-05\nowner Larch Co-op\ntest pump 40 L/min\n  observed KH-04, r 30\n',
    );
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** An editor that knows the folder. */
  async function inFolder() {
    const other = startEditor();
    await other.beginIn(here(), { workspace: { workspaceFolders: true } });
    const symbols = (query: string) => other.request<SymbolInformation[]>('workspace/symbol', { query });
    await expect.poll(async () => (await symbols('KH-05')).length, { timeout: 10_000 }).toBe(1);
    return { other, symbols };
  }

  test('the id of a well is renamed where it stands and in the logs that speak of it', async () => {
    const { other } = await inFolder();
    const log = await openMarked(other, 'well [[KH-|04]]\n', here());
    const prepared = await other.request<{ range: Range }>('textDocument/prepareRename', about(log));
    expect(prepared.range).toEqual(log.ranges[0]);
    const { changes } = await other.request<WorkspaceEdit>('textDocument/rename', about(log, { newName: 'KH-14' }));
    expect(withEdits(log, changes?.[log.uri] ?? [])).toBe('well KH-14\n');
    const beside = Object.entries(changes ?? {}).find(([uri]) => uri.endsWith('b.well'))?.[1];
    expect(beside).toMatchObject([{ range: { start: { line: 3, character: 11 } }, newText: 'KH-14' }]);
  });

  test('wells are found by what they are known by, whatever log has them', async () => {
    const { other, symbols } = await inFolder();
    await openMarked(other, 'well KH-04\nstrata\n  0 - 9 Fenmarrow Formation, limestone\n', here());
    expect((await symbols('larch')).map(({ name, containerName }) => [name, containerName])).toEqual([
      ['Larch Co-op', 'KH-05'],
    ]);
    expect((await symbols('fenm')).map(({ name }) => name)).toEqual(['Fenmarrow']);
  });
});
