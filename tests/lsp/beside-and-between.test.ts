import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CodeLens,
  DocumentLink,
  FoldingRange,
  InlayHint,
  Location,
  SignatureHelp,
  SymbolInformation,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { type Editor, editorsOfTests } from './editor.ts';

const startEditor = editorsOfTests();
let editor: Editor;
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'drillhand-wells-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const uri = 'file:///wells/kestrel-hollow.well';
const log = [
  'units m mm',
  'rules general',
  'strata',
  '  0 - 7.2 clay',
  '  - 38 ft sand # allow unknown-term: none here',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
  '  shoe 7.2',
  'photo 3 seam.jpg',
  '',
].join('\n');

const at = (line: number, character: number) => ({ line, character });
const range = (line: number, start: number, end: number) => ({ start: at(line, start), end: at(line, end) });
const about = (more: object = {}) => ({ textDocument: { uri }, ...more });

async function started(settings: unknown = null, text = log, inlayHint: object = {}): Promise<void> {
  editor = startEditor();
  editor.settings = settings;
  await editor.begin({
    workspace: { configuration: true },
    textDocument: {
      codeAction: { resolveSupport: { properties: ['edit'] } },
      foldingRange: { foldingRange: { collapsedText: true } },
      inlayHint,
    },
  });
  await editor.open(uri, text);
  await editor.report(uri, 1);
}

describe('beside the text', () => {
  test('hints of the range that is shown', async () => {
    await started();
    const hints = await editor.request<InlayHint[]>('textDocument/inlayHint', about({ range: range(4, 0, 9) }));
    expect(hints.map(({ label, position }) => [label, position.line])).toEqual([
      ['= 11.58 m', 4],
      ['4.382 m', 4],
    ]);
  });

  test('what is told of a hint comes with it, or later to an editor that asks for it when someone points at it', async () => {
    const asked = about({ range: range(4, 0, 9) });
    await started();
    const [, told] = await editor.request<InlayHint[]>('textDocument/inlayHint', asked);
    expect(told?.tooltip).toBe('thickness 4.382 m');
    await started(null, log, { resolveSupport: { properties: ['tooltip'] } });
    const [, silent] = await editor.request<InlayHint[]>('textDocument/inlayHint', asked);
    expect(silent).not.toHaveProperty('tooltip');
    expect(await editor.request('inlayHint/resolve', silent)).toMatchObject({ tooltip: 'thickness 4.382 m' });
    const gone = { ...silent, label: '9 m' };
    expect(await editor.request('inlayHint/resolve', gone)).toEqual(gone);
  });

  test('a kind that is switched off is not sent, nor are totals', async () => {
    await started({ inlayHints: { units: false }, codeLens: { totals: false } });
    const hints = await editor.request<InlayHint[]>('textDocument/inlayHint', about({ range: range(4, 0, 9) }));
    expect(hints.map(({ label }) => label)).toEqual(['4.382 m']);
    expect(await editor.request('textDocument/codeLens', about())).toEqual([]);
  });

  test('totals above sections, and in the place of folded lines', async () => {
    await started();
    const lenses = await editor.request<CodeLens[]>('textDocument/codeLens', about());
    expect(lenses.map(({ command }) => [command?.title, command?.command])).toEqual([
      ['2 layers · down to 11.58 m', ''],
      ['7.65 m long', ''],
    ]);
    const folds = await editor.request<FoldingRange[]>('textDocument/foldingRange', about());
    expect(folds[0]?.collapsedText).toBe('2 layers · down to 11.58 m');
  });

  test('what a line takes, unasked only where it still lacks something', async () => {
    await started(null, 'casing 0 - 7.2 \nhole\n  0 - 7 \n');
    const ask = (line: number, character: number, triggerKind: number) =>
      editor.request<SignatureHelp | null>(
        'textDocument/signatureHelp',
        about({ position: at(line, character), context: { triggerKind, isRetrigger: false } }),
      );
    const help = await ask(0, 15, 2);
    const active = help?.signatures[0]?.parameters?.[help.activeParameter ?? -1];
    const [start, end] = Array.isArray(active?.label) ? active.label : [0, 0];
    expect(help?.signatures[0]?.label.slice(start, end)).toBe('material');
    expect(await ask(2, 8, 2)).toBeNull();
    expect((await ask(2, 8, 1))?.signatures[0]?.label).toContain('diameter');
  });
});

describe('within a log', () => {
  test('definition and references of a contact', async () => {
    await started();
    const definition = await editor.request<Location[]>('textDocument/definition', about({ position: at(6, 8) }));
    expect(definition).toEqual([{ uri, range: range(3, 6, 9) }]);
    const references = await editor.request<Location[]>(
      'textDocument/references',
      about({ position: at(6, 8), context: { includeDeclaration: false } }),
    );
    expect(references.map((each) => each.range.start.line)).toEqual([4, 5, 6]);
  });

  test('links to pictures; to pages only for an editor that shows them', async () => {
    await started();
    const links = await editor.request<DocumentLink[]>('textDocument/documentLink', about());
    expect(links.map(({ target }) => target)).toEqual(['file:///wells/seam.jpg']);
    const page = await editor.request<string>('drillhand/page', { kind: 'rule', id: 'missing-shoe' });
    expect(page).toMatch(/^# missing/);
    expect(await editor.request('drillhand/page', { kind: 'pack', id: 'nothing' })).toBeNull();
  });

  test('a refactoring is worked out when it is chosen', async () => {
    await started();
    const actions = await editor.request<CodeAction[]>(
      'textDocument/codeAction',
      about({ range: range(0, 0, 0), context: { diagnostics: [], only: ['refactor'], triggerKind: 1 } }),
    );
    const convert = actions.find(({ title }) => title.startsWith('Convert'));
    expect(convert).toMatchObject({ kind: 'refactor.rewrite' });
    expect(convert?.edit).toBeUndefined();
    const { edit } = await editor.request<CodeAction>('codeAction/resolve', convert);
    expect(edit?.changes?.[uri]?.map(({ newText }) => newText)).toContain('units ft in');
    await editor.change(uri, 2, [{ range: range(0, 0, 0), text: '# ' }]);
    expect((await editor.request<CodeAction>('codeAction/resolve', convert)).edit).toBeUndefined();
  });
});

const ownPack = JSON.stringify({ id: 'fen-1', title: 'Fen', notice: 'A help, not the law.', limits: {} });

describe('through the folder', () => {
  const inFolder = (name: string): string => pathToFileURL(path.join(folder, name)).href;

  async function opened(): Promise<string> {
    writeFileSync(
      path.join(folder, 'a.well'),
      'well KH-04\nowner Kestrel Co-op\nstrata\n  0 - 9 Fenmarrow Formation, limestone\n',
    );
    writeFileSync(path.join(folder, 'own.wellrules.json'), ownPack);
    writeFileSync(path.join(folder, 'b.well'), 'well KH-05\ntest pump 40 L/min\n  observed KH-04, r 30\n');
    editor = startEditor();
    await editor.request('initialize', {
      processId: process.pid,
      rootUri: null,
      capabilities: { workspace: { workspaceFolders: true } },
      workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'wells' }],
    });
    await editor.notify('initialized', {});
    const a = inFolder('a.well');
    await editor.open(a, 'well KH-04\nowner Kestrel Co-op\nstrata\n  0 - 9 Fenmarrow Formation, limestone\n');
    await editor.report(a, 1);
    for (let tries = 0; tries < 100 && (await symbols('KH-05')).length === 0; tries += 1)
      await new Promise((resolve) => setTimeout(resolve, 50));
    return a;
  }

  const symbols = (query: string) => editor.request<SymbolInformation[]>('workspace/symbol', { query });

  const namesOf = (edit: WorkspaceEdit): string[] =>
    Object.entries(edit.changes ?? {})
      .flatMap(([file, edits]) =>
        edits.map((each) => `${path.basename(file)} ${each.range.start.line}: ${each.newText}`),
      )
      .sort();

  test('wells are found by what they are known by', async () => {
    await opened();
    expect((await symbols('kestrel')).map(({ name, containerName }) => [name, containerName])).toEqual([
      ['Kestrel Co-op', 'KH-04'],
    ]);
    expect((await symbols('fenm')).map(({ name }) => name)).toEqual(['Fenmarrow']);
  });

  test('the id is renamed wherever it is named, or it is told why not', async () => {
    const a = await opened();
    const position = at(0, 7);
    const prepared = await editor.request('textDocument/prepareRename', { textDocument: { uri: a }, position });
    expect(prepared).toEqual({ range: range(0, 5, 10), placeholder: 'KH-04' });
    const rename = (newName: string) =>
      editor.request<WorkspaceEdit>('textDocument/rename', { textDocument: { uri: a }, position, newName });
    expect(namesOf(await rename('KH-14'))).toEqual(['a.well 0: KH-14', 'b.well 2: KH-14']);
    await expect(rename('kh-05')).rejects.toThrow('already');
    await expect(rename('A, B')).rejects.toThrow('commas');
    await expect(
      editor.request('textDocument/prepareRename', { textDocument: { uri: a }, position: at(1, 9) }),
    ).rejects.toThrow('Only the id of a well');
  });

  test('from the name of a pack of the workspace to its file', async () => {
    await opened();
    const c = inFolder('c.well');
    await editor.open(c, 'rules fen-1\n');
    await editor.report(c, 1);
    const definition = await editor.request<Location[]>('textDocument/definition', {
      textDocument: { uri: c },
      position: at(0, 8),
    });
    expect(definition.map((each) => path.basename(each.uri))).toEqual(['own.wellrules.json']);
    const links = await editor.request<DocumentLink[]>('textDocument/documentLink', { textDocument: { uri: c } });
    expect(links.map(({ target }) => path.basename(target ?? ''))).toEqual(['own.wellrules.json']);
  });

  test('from an id to the well and to the logs that speak of it', async () => {
    const a = await opened();
    const b = inFolder('b.well');
    await editor.open(b, 'well KH-05\ntest pump 40 L/min\n  observed KH-04, r 30\n');
    const definition = await editor.request<Location[]>('textDocument/definition', {
      textDocument: { uri: b },
      position: at(2, 13),
    });
    expect(definition.map((each) => path.basename(each.uri))).toEqual(['a.well']);
    const references = await editor.request<Location[]>('textDocument/references', {
      textDocument: { uri: a },
      position: at(0, 7),
      context: { includeDeclaration: true },
    });
    expect(references).toHaveLength(2);
  });
});
