import { describe, expect, test } from 'vitest';
import type { CodeAction, TextEdit } from 'vscode-languageserver-protocol';
import { editorOfTests } from './editor.ts';
import { about, openMarked, withEdits } from './marked-log.ts';

const editor = editorOfTests({ textDocument: { codeAction: { resolveSupport: { properties: ['edit'] } } } });

interface Offered {
  readonly titles: readonly string[];
  /** The text after the action whose title holds the words. */
  after(words: string): Promise<string>;
}

/** What the lamp offers at the `|`. */
async function offered(marked: string): Promise<Offered> {
  const log = await openMarked(editor(), marked);
  const range = { start: log.position, end: log.position };
  const context = { diagnostics: [], triggerKind: 1 };
  const actions = await editor().request<CodeAction[]>('textDocument/codeAction', about(log, { range, context }));
  return {
    titles: actions.map(({ title }) => title),
    after: async (words) => {
      const action = actions.find(({ title }) => title.includes(words));
      if (action === undefined) throw new Error(`"${words}" is not among: ${actions.map(({ title }) => title)}`);
      const { edit } = action.edit ? action : await editor().request<CodeAction>('codeAction/resolve', action);
      return withEdits(log, edit?.changes?.[log.uri] ?? []);
    },
  };
}

const after = async (marked: string, words: string): Promise<string> => (await offered(marked)).after(words);

describe('a gap is closed three ways', () => {
  const gap = 'strata\n  0 - 3.8 clay\n  |4.1 - 6.1 sand';

  test.each([
    ['Begin this line at the base', 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand'],
    ['End the line above', 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand'],
    ['Log the gap as unknown', 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand'],
  ])('%s', async (words, wanted) => {
    expect(await after(gap, words)).toBe(wanted);
  });
});

describe('an overlap is closed three ways', () => {
  const overlap = 'strata\n  0 - 4.1 clay\n  |3.8 - 6.1 sand';

  test.each([
    ['Begin this line at the base', 'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand'],
    ['End the line above', 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand'],
    ['given twice as unknown', 'strata\n  0 - 3.8 clay\n  - 4.1  ?\n  4.1 - 6.1 sand'],
  ])('%s', async (words, wanted) => {
    expect(await after(overlap, words)).toBe(wanted);
  });
});

describe('a text in order is changed', () => {
  // NIST SP 811, appendix B: 1 ft = 0.3048 m exactly.
  test('to the other units, and back to the letter', async () => {
    const text = 'units ft in\nhole\n  0-12.5 10 ar\n  - 100 6\ncasing +1.5 - 12.5 steel 6.625 x 0.28\n';
    const metric = await after(`|${text}`, 'metres and millimetres');
    expect(metric).toMatch(/^units m mm\nhole\n {2}0-3\.81\d* 254\S* ar/);
    expect(await after(`|${metric}`, 'feet and inches')).toBe(text);
  });

  test('from metric to US units and back to the letter', async () => {
    const text = 'units m mm\nstrata\n  0-3.8 slty cl brn\n  - 38 ft sand\nwater\n  6.10 fresh, 25 L/min\n';
    const us = await after(`|${text}`, 'feet and inches');
    expect(us).toMatch(/^units ft in\nstrata\n {2}0-12\.46719 slty cl brn/);
    expect(await after(`|${us}`, 'metres and millimetres')).toBe(text);
  });

  test('its lines sorted by depth', async () => {
    expect(await after('strata\n  9 - 12 sand\n  0 - 3| silt\n  - 9 clay', 'Sort the lines of strata')).toBe(
      'strata\n  0 - 3 silt\n  - 9 clay\n  9 - 12 sand',
    );
  });

  test('a missing section put in as questions', async () => {
    expect(await after('well A\nhole\n  0 - 9 200|', 'missing: strata')).toBe(
      'well A\nhole\n  0 - 9 200\n\nstrata\n  - ?  ?',
    );
  });

  test('a remark made a line', async () => {
    expect(await after('strata\n  0 - 30| sand ; water at 26.4', 'Make the remark a line')).toBe(
      'strata\n  0 - 30 sand\n\nwater\n  26.4  ?',
    );
  });

  test('terms written in full, and short', async () => {
    const full = 'strata\n  0 - 3 silty clay, brown';
    expect(await after('strata\n  0 - 3 slty cl| brn', 'terms of these lines in full')).toBe(full);
    const short = await after(full.replace('clay', 'cl|ay'), 'terms of these lines short');
    expect(short.length).toBeLessThan(full.length);
    expect(await after(`${short}|`, 'every term of the file in full')).toBe(full);
  });

  test('the next top follows a base that was moved', async () => {
    expect(await after('strata\n  0 - 4.|1 clay\n  3.8 - 6.1 sand', 'Let the next line begin at 4.1')).toBe(
      'strata\n  0 - 4.1 clay\n  4.1 - 6.1 sand',
    );
  });
});

test('a slip is mended, and a rule is silenced with the reason left open', async () => {
  const slip = await offered('strata\n  0 - 4 limst|one');
  expect(await slip.after('limestone')).toBe('strata\n  0 - 4 limestone');
  expect(await slip.after('Allow unknown-term')).toBe('strata\n  0 - 4 limstone  # allow unknown-term: ?');
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
