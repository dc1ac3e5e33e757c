import { describe, expect, test } from 'vitest';
import type { CompletionList } from 'vscode-languageserver-protocol';
import type { LogStatus, NewLogChoices, NextItem, PastedRows } from '../../server/lsp/protocol.ts';
import { editorOfTests, editorsOfTests } from './editor.ts';

const editor = editorOfTests();
const startEditor = editorsOfTests();
const uri = 'file:///typed.well';
const textDocument = { uri };
let version = 0;

/** Opens a text with one `|` in it; the place of the cursor. */
async function open(marked: string): Promise<{ line: number; character: number }> {
  const lines = marked.split('\n');
  const line = lines.findIndex((each) => each.includes('|'));
  version += 1;
  if (version > 1) await editor().notify('textDocument/didClose', { textDocument });
  await editor().open(uri, marked.replace('|', ''), version);
  return { line, character: lines[line]?.indexOf('|') ?? 0 };
}

describe('behind a keyword for which something is known', () => {
  const keywordsOf = async (initializationOptions: unknown): Promise<CompletionList> => {
    const other = startEditor();
    await other.request('initialize', {
      processId: process.pid,
      rootUri: null,
      capabilities: {},
      initializationOptions,
    });
    await other.notify('initialized', {});
    await other.open(uri, 'began 2026-05-04\n\n');
    const position = { line: 1, character: 0 };
    const list = await other.request<CompletionList>('textDocument/completion', { textDocument, position });
    await other.end();
    return list;
  };
  const commandOf = ({ items }: CompletionList, label: string) => items.find((item) => item.label === label)?.command;

  test('the list opens again in an editor that can', async () => {
    const list = await keywordsOf({ asksAgain: true });
    expect(commandOf(list, 'finished')?.command).toBe('editor.action.triggerSuggest');
    expect(commandOf(list, 'tag')).toBeUndefined();
  });

  test('no other editor is told a command that it may not know', async () => {
    expect(commandOf(await keywordsOf({ pages: true }), 'finished')).toBeUndefined();
  });
});

describe('what an editor asks while a log is typed', () => {
  test('behind Enter: edits that line the section up', async () => {
    const position = await open('strata\n0-3.8 slty cl\n       - |');
    const params = { textDocument, position, ch: '\n', options: { tabSize: 2, insertSpaces: true } };
    expect(await editor().request('textDocument/onTypeFormatting', params)).toEqual([
      {
        range: { start: { line: 1, character: 0 }, end: { line: 1, character: 13 } },
        newText: '  0    - 3.8    slty cl',
      },
    ]);
  });

  test('the next item that a line lacks, and the one after it', async () => {
    const { line, character } = await open('water\n  38.5 fresh|');
    const selected = { line, start: character, end: character };
    const next = await editor().request<NextItem>('drillhand/nextItem', { textDocument, selected, offered: null });
    expect(next.edits).toEqual([{ span: { line: 1, start: 12, end: 12 }, text: ', ? L/min' }]);
    expect(next.select).toEqual({ line: 1, start: 14, end: 15 });
    expect(next.offered).toEqual({ slot: 'rate', start: 12, end: 21 });
  });

  test('rows of a sheet as lines', async () => {
    const position = await open('strata\n       - |');
    const params = { textDocument, position, text: '0\t3.8\tslty cl\n3.8\t12\tsand\n' };
    expect(await editor().request<PastedRows>('drillhand/pastedRows', params)).toEqual({
      text: '  0    - 3.8    slty cl\n  3.8  - 12     sand',
      replaceBefore: 9,
      lines: 2,
    });
  });

  test.each([
    ['parted by commas', '0,3.8,slty cl brn\n3.8,12,sand', '  0    - 3.8    slty cl brn\n  3.8  - 12     sand'],
    ['parted by strokes', '0 | 3.8 | clay\n3.8 | 12 | sand', '  0    - 3.8    clay\n  3.8  - 12     sand'],
    ['in columns', '0     3.8   clay\n3.8   12    sand', '  0    - 3.8    clay\n  3.8  - 12     sand'],
    ['with the words first', 'clay 0-3.8\nbrn sand 3.8-12', '  0    - 3.8    clay\n  3.8  - 12     sand, brown'],
  ])('rows of a field sheet %s as lines', async (_, text, lines) => {
    const position = await open('strata\n       - |');
    const params = { textDocument, position, text };
    expect(await editor().request<PastedRows>('drillhand/pastedRows', params)).toMatchObject({ text: lines });
  });

  test.each([
    ['lines of the section', '0 - 3 clay, brown\n- 6 sand, grey'],
    ['a section of its own', 'water\n  38.5 fresh'],
    ['words', 'ask about the seam\nand the bags'],
    ['one row', 'clay 0-3.8'],
  ])('%s are pasted as they are', async (_, text) => {
    const position = await open('strata\n       - |');
    expect(await editor().request('drillhand/pastedRows', { textDocument, position, text })).toBeNull();
  });

  test('completion ranks what the other open logs used', async () => {
    await editor().open('file:///beside.well', 'strata\n  0 - 3 marl\n  - 6 marl');
    const position = await open('strata\n  0 - 3 |');
    const list = await editor().request<{ items: { label: string }[] }>('textDocument/completion', {
      textDocument,
      position,
    });
    expect(list.items[0]?.label).toBe('marl');
  });

  test('the state of a log: its packs, and what is due', async () => {
    await open('rules montana-36-21\nfinished 2026-05-06\nhole\n  0 - 61 152|');
    const status = await editor().request<LogStatus>('drillhand/logStatus', { textDocument });
    expect(status.packs).toEqual(['montana-36-21']);
    // Montana's 60 days (ARM 36.21, as the pack has them) from 6 May end on 5 July.
    expect(status.due).toMatchObject({ what: 'record', date: '2026-07-05' });
  });

  test('a new log asks for units and packs alone', async () => {
    const choices = await editor().request<NewLogChoices>('drillhand/newLogChoices', undefined);
    expect(choices.units.map(({ id }) => id)).toContain('ft in gal-us');
    expect(choices.packs[0]?.id).toBe('general');
    const snippet = await editor().request<string>('drillhand/newLog', { units: 'ft in', packs: ['general'] });
    expect(snippet).toMatch(/^well {6}\$\{1:\?\}\nunits {5}ft in\nrules {5}general\n/);
  });

  test.each(['drillhand/nextItem', 'drillhand/pastedRows', 'drillhand/logStatus', 'textDocument/onTypeFormatting'])(
    '%s of a log that is not open is answered with nothing',
    async (method) => {
      const params = {
        textDocument: { uri: 'file:///other.well' },
        ...{ position: { line: 0, character: 0 }, text: 'a\tb', ch: '\n', options: {} },
        ...{ selected: { line: 0, start: 0, end: 0 }, offered: null },
      };
      expect(await editor().request(method, params)).toBeNull();
    },
  );

  test('what makes no sense does not end the server', async () => {
    await open('strata\n|');
    const selected = { line: 99, start: -5, end: 1e9 };
    const offered = { slot: 'nothing', start: 50, end: 2 };
    expect(await editor().request('drillhand/nextItem', { textDocument, selected, offered })).toBeNull();
    expect(await editor().request('drillhand/pastedRows', { textDocument, position: null, text: 5 })).toBeNull();
  });
});
