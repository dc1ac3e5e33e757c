import { fork, spawn } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CompletionList,
  DocumentSymbol,
  FoldingRange,
  Hover,
  PublishDiagnosticsParams,
  TextEdit,
} from 'vscode-languageserver-protocol';
import { createMessageConnection, IPCMessageReader, IPCMessageWriter } from 'vscode-languageserver-protocol/node';
import type { Preview } from '../../server/lsp/protocol.ts';
import { type Editor, editorsOfTests } from './editor.ts';

const uri = 'file:///wells/kestrel-hollow.well';
const log = [
  'well KH-04',
  'ground 287.4 m',
  'hole',
  '  0 - 7.2  254  air rotary',
  '  - 61  152',
  'strata',
  '  0 - 6.1  slty cl brn',
  '  - 61  lst gry',
  'casing  +0.45 - 7.2  steel 168.3 x 6.4 welded',
  '  shoe 7.2',
  '  grout 0 - 7.2 neat cement, 0.29 m3',
  '',
].join('\n');

const startEditor = editorsOfTests();
let editor: Editor;

const started = async (text = log): Promise<Editor> => {
  editor = startEditor();
  await editor.begin();
  await editor.open(uri, text);
  return editor;
};

const about = (more: object = {}) => ({ textDocument: { uri }, ...more });
const at = (line: number, character: number) => ({ line, character });
const range = (line: number, start: number, end: number) => ({ start: at(line, start), end: at(line, end) });

const applied = (text: string, edits: readonly TextEdit[]): string => {
  const lines = text.split('\n');
  for (const { range: where, newText } of [...edits].reverse()) {
    const line = lines[where.start.line] ?? '';
    lines[where.start.line] = line.slice(0, where.start.character) + newText + line.slice(where.end.character);
  }
  return lines.join('\n');
};

describe('a session from first to last', () => {
  test('initialize tells what the server can do', async () => {
    editor = startEditor();
    const { capabilities } = await editor.begin();
    expect(capabilities).toMatchObject({
      positionEncoding: 'utf-16',
      textDocumentSync: { openClose: true, change: 2 },
      hoverProvider: true,
      documentFormattingProvider: true,
    });
    expect(await editor.end()).toBe(0);
  });

  test('findings come after opening and after a change, and say which version they are of', async () => {
    await started('strata\n  0 - 6.1  clay\n');
    const clean = await editor.report(uri, 1);
    expect(clean.diagnostics.map(({ code }) => code)).not.toContain('unknown-term');
    await editor.change(uri, 2, [{ range: range(1, 11, 15), text: 'claq' }]);
    const { diagnostics } = await editor.report(uri, 2);
    const slip = diagnostics.find(({ code }) => code === 'unknown-term');
    expect(slip).toMatchObject({ range: range(1, 11, 15), source: 'drillhand' });
    const analysed = (note: { params: unknown }) => JSON.stringify(note.params) === JSON.stringify({ uri, version: 2 });
    await editor.until(() => editor.notes.some(analysed), 'word that version 2 is analysed');
    expect(editor.notes.every(({ method }) => method === 'drillhand/analysed')).toBe(true);
  });

  test('related places, and what silences nothing is shown faded', async () => {
    await started('strata\n  0 - 6.1 clay\n  5 - 8 sand\n  8 - 9 clay # allow interval-gap: none there\n');
    const { diagnostics } = await editor.report(uri, 1);
    const overlap = diagnostics.find(({ code }) => code === 'interval-overlap');
    expect(overlap?.relatedInformation?.[0]?.location).toMatchObject({ uri, range: { start: { line: 1 } } });
    expect(diagnostics.find(({ code }) => code === 'allow-silences-nothing')?.tags).toEqual([1]);
  });

  test('a fix of a finding mends it', async () => {
    const text = 'strata\n  0 - 6.1  clay\nshoo 7.2\ncasing 0 - 7.2 steel 168.3\n  shoo 7.2\n';
    await started(text);
    const { diagnostics } = await editor.report(uri, 1);
    const near = diagnostics.find(({ range: where }) => where.start.line === 4);
    expect(near).toBeDefined();
    const actions = await editor.request<CodeAction[]>(
      'textDocument/codeAction',
      about({ range: range(4, 2, 6), context: { diagnostics: near ? [near] : [] } }),
    );
    const fix = actions.find((action) => action.edit?.changes?.[uri]?.some(({ newText }) => newText === 'shoe'));
    expect(fix?.diagnostics?.map(({ code }) => code)).toEqual([near?.code]);
    await editor.change(
      uri,
      2,
      (fix?.edit?.changes?.[uri] ?? []).map((edit) => ({ range: edit.range, text: edit.newText })),
    );
    const after = await editor.report(uri, 2);
    expect(
      after.diagnostics.filter(({ code }) => code === near?.code).map(({ range: where }) => where.start.line),
    ).not.toContain(4);
  });

  test('the safe fixes come as one action, only where they are asked for', async () => {
    await started();
    await editor.report(uri, 1);
    const context = { diagnostics: [], only: ['source.fixAll.drillhand'] };
    const actions = await editor.request<CodeAction[]>(
      'textDocument/codeAction',
      about({ range: range(0, 0, 0), context }),
    );
    expect(actions.every(({ kind }) => kind === 'source.fixAll.drillhand')).toBe(true);
  });

  test('hover tells a term and a depth', async () => {
    await started();
    const term = await editor.request<Hover>('textDocument/hover', about({ position: at(7, 9) }));
    expect(term.contents).toMatchObject({ kind: 'markdown', value: expect.stringContaining('limestone') });
    const depth = await editor.request<Hover>('textDocument/hover', about({ position: at(6, 7) }));
    expect(depth.contents).toMatchObject({ value: expect.stringContaining('20.01 ft') });
  });

  test('completion offers what hangs on the string, and explains it when asked', async () => {
    await started(log.replace('  shoe 7.2\n', '  \n'));
    const list = await editor.request<CompletionList>('textDocument/completion', about({ position: at(9, 2) }));
    const first = list.items[0];
    expect(first).toMatchObject({ label: 'shoe', insertTextFormat: 2 });
    expect(list.itemDefaults?.editRange).toEqual(range(9, 2, 2));
    const resolved = await editor.request<{ documentation: { value: string } }>('completionItem/resolve', first);
    expect(resolved.documentation.value).toContain('shoe 7.2');
  });

  test('a blank at the end of a line opens no list that would take the next Enter', async () => {
    await started('rules \nstrata\n  0 - 3 clay \n');
    const context = { triggerKind: 2, triggerCharacter: ' ' };
    const ask = (line: number, character: number) =>
      editor.request<CompletionList | null>(
        'textDocument/completion',
        about({ position: at(line, character), context }),
      );
    expect((await ask(0, 6))?.items.map(({ label }) => label)).toContain('general');
    expect(await ask(2, 13)).toBeNull();
  });

  test('an editor without snippets and list defaults gets plain text edits', async () => {
    editor = startEditor();
    await editor.begin({});
    await editor.open(uri, 'casing 0 - 7.2 steel\n\n');
    const list = await editor.request<CompletionList>('textDocument/completion', about({ position: at(1, 0) }));
    expect(list.itemDefaults).toBeUndefined();
    expect(list.items[0]).toMatchObject({ label: 'shoe', textEdit: { range: range(1, 0, 0), newText: 'shoe ? ' } });
  });

  test('formatting writes the long form, and formatting again changes nothing', async () => {
    await started();
    const edits = await editor.request<TextEdit[]>('textDocument/formatting', about({ options: {} }));
    const formatted = applied(log, edits);
    expect(formatted).toContain('silty clay, brown');
    await editor.change(uri, 2, [{ text: formatted }]);
    expect(await editor.request('textDocument/formatting', about({ options: {} }))).toEqual([]);
  });

  test('formatting a range leaves other lines alone', async () => {
    await started();
    const edits = await editor.request<TextEdit[]>(
      'textDocument/rangeFormatting',
      about({ range: range(6, 0, 5), options: {} }),
    );
    expect(edits.map(({ range: where }) => where.start.line)).toEqual([6]);
  });

  test('the outline, the folds and the tokens are those of the text', async () => {
    await started();
    const symbols = await editor.request<DocumentSymbol[]>('textDocument/documentSymbol', about());
    expect(symbols.map(({ name }) => name)).toEqual(['well', 'ground', 'hole', 'strata', 'casing']);
    expect(symbols.at(-1)?.children?.map(({ name }) => name)).toEqual(['shoe', 'grout']);
    const folds = await editor.request<FoldingRange[]>('textDocument/foldingRange', about());
    expect(folds.map(({ startLine, endLine }) => [startLine, endLine])).toEqual([
      [2, 4],
      [5, 7],
      [8, 10],
    ]);
    const tokens = await editor.request<{ data: number[] }>('textDocument/semanticTokens/full', about());
    expect(tokens.data.slice(0, 5)).toEqual([0, 0, 4, 0, 0]);
    expect(tokens.data.length % 5).toBe(0);
  });

  test('the preview is of the version asked about', async () => {
    await started();
    await editor.change(uri, 7, [{ range: range(0, 5, 10), text: 'KH-05' }]);
    const preview = await editor.request<Preview>('drillhand/preview', { textDocument: { uri } });
    expect(preview).toMatchObject({ version: 7, title: 'KH-05' });
    expect(preview.sections.find(({ id }) => id === 'drawing')?.html).toContain('data-line');
  });

  test('closing takes the findings away', async () => {
    await started('strata\n  0 - 6.1 claq\n');
    await editor.report(uri, 1);
    await editor.notify('textDocument/didClose', about());
    await editor.until(() => editor.reports.at(-1)?.diagnostics.length === 0, 'no findings');
    expect(await editor.request('textDocument/hover', about({ position: at(0, 0) }))).toBeNull();
  });
});

describe('settings', () => {
  test('a severity set in the editor counts, and a change of it is seen', async () => {
    editor = startEditor();
    editor.settings = { rules: { packs: [], severity: { 'unknown-term': 'error' } } };
    await editor.begin();
    await editor.open(uri, 'strata\n  0 - 6.1 claq\n');
    const first = await editor.report(uri, 1);
    expect(first.diagnostics.find(({ code }) => code === 'unknown-term')?.severity).toBe(1);
    editor.settings = { rules: { severity: { 'unknown-term': 'off' } } };
    editor.reports.length = 0;
    await editor.notify('workspace/didChangeConfiguration', { settings: null });
    const second = await editor.report(uri, 1);
    expect(second.diagnostics.map(({ code }) => code)).not.toContain('unknown-term');
  });

  test('an editor that cannot be asked sends its settings', async () => {
    editor = startEditor();
    await editor.begin({});
    await editor.open(uri, 'strata\n  0 - 6.1 claq\n');
    await editor.report(uri, 1);
    editor.reports.length = 0;
    const settings = { drillhand: { rules: { severity: { 'unknown-term': 'off' } } } };
    await editor.notify('workspace/didChangeConfiguration', { settings });
    const { diagnostics } = await editor.report(uri, 1);
    expect(diagnostics.map(({ code }) => code)).not.toContain('unknown-term');
  });

  test('settings of the wrong shape count as not set', async () => {
    editor = startEditor();
    editor.settings = { rules: { packs: 7, severity: ['x', { y: 1 }] } };
    await editor.begin();
    await editor.open(uri, 'strata\n  0 - 6.1 claq\n');
    expect((await editor.report(uri, 1)).diagnostics.length).toBeGreaterThan(0);
  });
});

describe('many changes at once', () => {
  test('of changes that wait in the queue only the last is analysed', async () => {
    await started('strata\n  0 - 6.1 clay\n');
    await editor.report(uri, 1);
    const sent: Promise<void>[] = [];
    for (let version = 2; version <= 60; version += 1) {
      sent.push(editor.change(uri, version, [{ range: range(1, 0, 0), text: ' ' }]));
    }
    await Promise.all(sent);
    await editor.report(uri, 60);
    const versions = editor.reports.map(({ version }) => version ?? 0);
    expect(versions).toEqual([...versions].sort((a, b) => a - b));
    expect(versions.length).toBeLessThan(20);
  });

  test('a request sees the changes sent before it', async () => {
    await started('strata\n  0 - 6.1 clay\n');
    void editor.change(uri, 2, [{ range: range(1, 10, 14), text: 'sand' }]);
    const hover = await editor.request<Hover>('textDocument/hover', about({ position: at(1, 12) }));
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('**sand**') });
  });
});

describe('what no editor should send', () => {
  test('documents that are not open, places outside the text, versions out of order', async () => {
    await started('strata\n  0 - 6.1 clay\n');
    const elsewhere = { textDocument: { uri: 'file:///nowhere.well' }, position: at(0, 0) };
    expect(await editor.request('textDocument/hover', elsewhere)).toBeNull();
    await editor.change('file:///nowhere.well', 3, [{ text: 'x' }]);
    for (const place of [at(999, 0), at(0, 999), at(-1, -5), at(1e9, 1e9)]) {
      await editor.request('textDocument/hover', about({ position: place }));
      await editor.request('textDocument/completion', about({ position: place }));
      await editor.request('textDocument/documentHighlight', about({ position: place }));
      await editor.request('textDocument/selectionRange', about({ positions: [place] }));
    }
    await editor.change(uri, 9, [{ range: { start: at(50, 2), end: at(70, 9) }, text: 'tail' }]);
    await editor.change(uri, 4, [{ text: 'gone' }]);
    await editor.until(() => editor.logged.some((line) => line.includes('version 4')), 'a word on version 4');
    const symbols = await editor.request<DocumentSymbol[]>('textDocument/documentSymbol', about());
    expect(symbols.map(({ name }) => name)).toEqual(['strata']);
  });

  test('parameters without what they must have get an empty answer', async () => {
    await started();
    for (const params of [{}, { textDocument: {} }, { textDocument: { uri } }, null, 7, []]) {
      await editor.request('textDocument/hover', params).catch((error: unknown) => error);
    }
    await editor.notify('textDocument/didOpen', {});
    await editor.notify('textDocument/didChange', { textDocument: { uri, version: 2 } });
    await editor.notify('textDocument/didClose', null);
    const hover = await editor.request<Hover>('textDocument/hover', about({ position: at(7, 9) }));
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('limestone') });
  });

  test('a fault within an answer is logged, and the answer is an empty one', async () => {
    await started();
    const item = { label: 'x', data: { kind: 'row', id: 'no such row' } };
    expect(await editor.request('completionItem/resolve', item)).toEqual(item);
    await editor.until(
      () => editor.logged.some((each) => each.includes('completionItem/resolve failed')),
      'a word on it',
    );
    expect(await editor.request('completionItem/resolve', { label: 'y' })).toEqual({ label: 'y' });
  });

  test('an unknown request gets an error and an unknown notification nothing', async () => {
    await started();
    await expect(editor.request('drillhand/nothing', {})).rejects.toThrow();
    await editor.notify('drillhand/nothing', {});
    expect(await editor.end()).toBe(0);
  });

  test('a message that is no JSON does not end the server', async () => {
    await started();
    const junk = '{"jsonrpc": nonsense';
    editor.process.stdin?.write(`Content-Length: ${junk.length}\r\n\r\n${junk}`);
    const hover = await editor.request<Hover>('textDocument/hover', about({ position: at(7, 9) }));
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('limestone') });
  });

  test('bytes that are no message do not end the server', async () => {
    await started();
    await editor.report(uri, 1);
    editor.process.stdin?.write('hello\r\n\r\n');
    editor.process.stdin?.write('Content-Length: many\r\n\r\n');
    // What stands right behind such bytes is read once more comes.
    const more = setInterval(() => void editor.notify('drillhand/nothing', {}), 100);
    const hover = await editor.request<Hover>('textDocument/hover', about({ position: at(7, 9) }));
    clearInterval(more);
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('limestone') });
  });

  test('a binary file, a mark of byte order, odd numbers', async () => {
    const bytes = Array.from({ length: 20_000 }, (_, at) => String.fromCharCode((at * 7919) % 256)).join('');
    await started(bytes);
    expect((await editor.report(uri, 1)).diagnostics.length).toBeLessThanOrEqual(1000);
    await editor.change(uri, 2, [{ text: '\uFEFFstrata\r\n 0 - NaN clay\r\n 0 - 1e999 clay\r\n 0 - Infinity' }]);
    expect((await editor.report(uri, 2)).diagnostics.length).toBeGreaterThan(0);
  });

  test('fifty million characters on one line are one finding, and the server goes on', {
    timeout: 60_000,
  }, async () => {
    await started(`strata\n${'0 - 1 clay '.repeat(4_600_000)}`);
    const { diagnostics } = await editor.report(uri, 1);
    expect(diagnostics.filter(({ range: where }) => where.start.line === 1).map(({ code }) => code)).toEqual([
      'line-too-long',
    ]);
    expect(await editor.request('textDocument/completion', about({ position: at(1, 40_000_000) }))).toBeNull();
    await editor.request('textDocument/hover', about({ position: at(1, 40_000_000) }));
    await editor.request('textDocument/semanticTokens/full', about());
  });
});

test('the channel between processes serves as well', async () => {
  await started();
  const child = fork(editor.bundle.file, ['--node-ipc'], { silent: true });
  const connection = createMessageConnection(new IPCMessageReader(child), new IPCMessageWriter(child));
  const findings = new Promise<PublishDiagnosticsParams>((resolve) =>
    connection.onNotification('textDocument/publishDiagnostics', resolve),
  );
  connection.listen();
  await connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities: {} });
  const text = 'strata\n  0 - 6.1 claq\n';
  const textDocument = { uri, languageId: 'drillhand', version: 1, text };
  await connection.sendNotification('textDocument/didOpen', { textDocument });
  expect((await findings).diagnostics.map(({ code }) => code)).toContain('unknown-term');
  const exited = new Promise((resolve) => child.once('exit', resolve));
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  expect(await exited).toBe(0);
  connection.dispose();
});

describe('the end', () => {
  test('exit without shutdown ends with 1, after it with 0', async () => {
    editor = startEditor();
    await editor.begin();
    await editor.notify('exit', undefined);
    expect(await editor.exited).toBe(1);
    editor = startEditor();
    await editor.begin();
    expect(await editor.end()).toBe(0);
  });

  test('the server ends when the process that started it has died, though its streams are open', async () => {
    const dead = spawn(process.execPath, ['-e', '']);
    await new Promise((resolve) => dead.once('exit', resolve));
    editor = startEditor();
    await editor.request('initialize', { processId: dead.pid, rootUri: null, capabilities: {} });
    expect(await editor.exited).toBe(1);
  });

  test('the server ends when its editor is gone', async () => {
    await started();
    editor.process.stdin?.end();
    expect(await editor.exited).toBe(1);
  });
});
