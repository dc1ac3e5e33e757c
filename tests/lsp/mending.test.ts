import { describe, expect, test } from 'vitest';
import type { CodeAction, TextEdit } from 'vscode-languageserver-protocol';
import { editorOfTests } from './editor.ts';
import { about, openMarked, withEdits } from './marked-log.ts';
import { mendings, metric, us } from './mendings.ts';

const editor = editorOfTests({ textDocument: { codeAction: { resolveSupport: { properties: ['edit'] } } } });

/** The text after what the lamp offers at the `|` under a title that holds the words. */
async function after(marked: string, words: string): Promise<string> {
  const log = await openMarked(editor(), marked);
  const range = { start: log.position, end: log.position };
  const context = { diagnostics: [], triggerKind: 1 };
  const actions = await editor().request<CodeAction[]>('textDocument/codeAction', about(log, { range, context }));
  const action = actions.find(({ title }) => title.includes(words));
  if (action === undefined) throw new Error(`"${words}" is not among: ${actions.map(({ title }) => title)}`);
  const { edit } = action.edit ? action : await editor().request<CodeAction>('codeAction/resolve', action);
  return withEdits(log, edit?.changes?.[log.uri] ?? []);
}

test.each(mendings)('$does', async ({ before, offer, after: wanted }) => {
  expect(await after(before, offer)).toBe(wanted);
});

describe('a file is converted and back to the letter', () => {
  test('from metric to US units', async () => {
    expect(await after(`|${metric}`, 'feet and inches')).toBe(us);
    expect(await after(`|${us}`, 'metres and millimetres')).toBe(metric);
  });

  // NIST SP 811, appendix B: 1 ft = 0.3048 m exactly.
  test('from US to metric units', async () => {
    const text = 'units ft in\nhole\n  0-12.5 10 ar\n  - 100 6\ncasing +1.5 - 12.5 steel 6.625 x 0.28\n';
    const converted = await after(`|${text}`, 'metres and millimetres');
    expect(converted).toMatch(/^units m mm\nhole\n {2}0-3\.81\d* 254\S* ar/);
    expect(await after(`|${converted}`, 'feet and inches')).toBe(text);
  });
});

describe('Enter', () => {
  const enter = async (marked: string): Promise<{ text: string; edits: readonly TextEdit[]; line: number }> => {
    const log = await openMarked(editor(), marked);
    const options = { tabSize: 2, insertSpaces: true };
    const edits = await editor().request<TextEdit[]>(
      'textDocument/onTypeFormatting',
      about(log, { ch: '\n', options }),
    );
    return { text: withEdits(log, edits), edits, line: log.position.line };
  };

  test('lines up the section above, and moves nothing that the cursor is in', async () => {
    const { text, edits, line } = await enter('strata\n0-3.8 slty cl\n-12 lst\n       - |');
    expect(text).toBe('strata\n  0    - 3.8    slty cl\n       - 12     lst\n       - ');
    expect(edits.filter(({ range }) => range.end.line >= line)).toEqual([]);
  });

  test('twice leaves the section', async () => {
    expect((await enter('strata\n  0    - 3.8    clay\n       - \n|')).text).toBe('strata\n  0    - 3.8    clay\n\n');
  });
});

test('a conversion that is refused changes nothing, and the user is told which line stands in the way', async () => {
  const text = 'well A\nunits metres mm\nstrata\n  0 - 3 clay\n';
  expect(await after(`|${text}`, 'feet and inches')).toBe(text);
  const told = () => editor().notes.filter(({ method }) => method === 'window/showMessage');
  await editor().until(() => told().length > 0, 'a message');
  expect(JSON.stringify(told())).toMatch(/The file was not converted\. Line 2 stands in the way: .*units metres mm/);
});
