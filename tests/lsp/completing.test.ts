import { describe, expect, test } from 'vitest';
import type { CompletionItem, CompletionList, Range } from 'vscode-languageserver-protocol';
import { editorOfTests } from './editor.ts';
import { about, type MarkedLog, openMarked, withEdits } from './marked-log.ts';

const editor = editorOfTests();

interface Offered {
  readonly log: MarkedLog;
  readonly items: readonly CompletionItem[];
  readonly range: Range;
}

/** What is offered at the `|`, in the order in which an editor shows it. */
async function offered(marked: string, folder?: string): Promise<Offered> {
  const log = await openMarked(editor(), marked, folder);
  const list = await editor().request<CompletionList>('textDocument/completion', about(log));
  const items = [...list.items].sort((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1));
  const range = list.itemDefaults?.editRange;
  if (range === undefined || !('start' in range)) throw new Error('the list has no range');
  return { log, items, range };
}

const labels = async (marked: string, folder?: string): Promise<readonly string[]> =>
  (await offered(marked, folder)).items.map(({ label }) => label);

function itemOf({ items }: Offered, label: string): CompletionItem {
  const item = items.find((each) => each.label === label);
  if (item === undefined) throw new Error(`${label} is not offered`);
  return item;
}

/** The text after what is offered under a label has been taken. */
async function taken(marked: string, label: string): Promise<string> {
  const found = await offered(marked);
  const { textEdit, textEditText } = itemOf(found, label);
  const edit = textEdit && 'range' in textEdit ? textEdit : { range: found.range, newText: textEditText ?? label };
  return withEdits(found.log, [edit]);
}

const docsOf = async (marked: string, label: string): Promise<string> => {
  const item = itemOf(await offered(marked), label);
  const { documentation } = await editor().request<CompletionItem>('completionItem/resolve', item);
  return typeof documentation === 'object' ? documentation.value : '';
};

describe('completion goes by the place', () => {
  test('keywords at a line, and what hangs on the open string', async () => {
    expect((await labels('|')).slice(0, 3)).toEqual(['well', 'units', 'rules']);
    expect((await labels('casing 0 - 7.2 steel\n  |')).slice(0, 2)).toEqual(['shoe', 'centralizers']);
    expect(await labels('|')).not.toContain('limestone');
  });

  test('materials in strata, methods in the hole, terms of fills in grout', async () => {
    expect(await labels('strata\n  0 - 4 li|')).toContain('limestone');
    expect(await labels('hole\n  0 - 4 254 |')).toContain('air rotary');
    expect(await labels('casing 0 - 7 steel\n  grout 0 - 7 |')).toContain('neat cement');
    expect(await labels('hole\n  0 - 4 254 |')).not.toContain('limestone');
  });

  test('the next base begins at the one above, and the bottom is that of the hole', async () => {
    expect(await taken('strata\n  0 - 3.8 clay\n  |', '- ')).toBe('strata\n  0 - 3.8 clay\n  - ');
    expect(itemOf(await offered('hole\n  0 - 61 152\nstrata\n  0 - |'), 'td').detail).toBe('bottom of the hole, 61 m');
  });
});

describe('completion ranks what fits', () => {
  test('what the file used comes first, then what the logs beside it used', async () => {
    await openMarked(editor(), 'strata\n  0 - 3 tuff\n  - 6 tuff, pink', 'file:///fen');
    const found = await labels('strata\n  0 - 3 marl\n  - 6 |', 'file:///fen');
    expect(found[0]).toBe('marl');
    expect(found.slice(1, 3).toSorted()).toEqual(['pink', 'tuff']);
  });

  test('the material under the last one is not guessed: the word used most is first wherever it stands', async () => {
    expect((await labels('strata\n  0 - 3 till\n  - 6 till\n  - 9 marl\n  - 12 |')).slice(0, 2)).toEqual([
      'till',
      'marl',
    ]);
  });
});

describe('completion takes what is typed in haste', () => {
  test('short forms are what an editor matches a term by', async () => {
    expect(itemOf(await offered('strata\n  0 - 4 |'), 'limestone').filterText).toMatch(/\blst\b/);
    expect(itemOf(await offered('strata\n  0 - 4 ls|'), 'limestone').filterText).toMatch(/^lst\b/);
    expect(await taken('strata\n  0 - 4 lst|', 'limestone')).toBe('strata\n  0 - 4 limestone');
  });

  test('a slip is offered what it was meant for', async () => {
    expect(await taken('strata\n  0 - 4 limstone|', 'limestone')).toBe('strata\n  0 - 4 limestone');
    expect(await taken('stratta|', 'strata')).toBe('strata');
  });
});

describe('completion says what it offers', () => {
  test('a term has its meaning and its source', async () => {
    const docs = await docsOf('strata\n  0 - 4 |', 'limestone');
    expect(docs).toContain('**limestone**');
    expect(docs).toMatch(/Source: \S/);
  });

  test('a keyword has what it takes, with an example', async () => {
    expect(await docsOf('|', 'casing')).toContain('```drillhand');
  });
});

describe('completion brings more than a word', () => {
  test('whole sections come as snippets, in the units of the file', async () => {
    const whole = itemOf(await offered('units ft in\n\nca|'), 'casing: with shoe, centralizers and grout');
    expect(whole.insertTextFormat).toBe(2);
    expect(whole.textEditText).toMatch(/^casing {2}\+\$\{1:\?\}.*\n {2}shoe(.*\n)*.* ft3,/);
  });

  // ASME B36.10M: 6 in schedule 40 is 6.625 x 0.280 in, 18.97 lb/ft (28.26 kg/m) with plain ends.
  test('sizes of casing with wall and weight, by the nominal size too', async () => {
    const six = itemOf(await offered('casing +0.45 - 7.2 steel 6|'), '168.3 x 7.1');
    expect(six.detail).toBe('6 in sch 40 steel, 28.3 kg/m');
    expect(await taken('casing +0.45 - 7.2 steel 6|', '168.3 x 7.1')).toBe('casing +0.45 - 7.2 steel 168.3 x 7.1');
  });

  test('packs behind rules, each with what it asks', async () => {
    expect(await taken('rules |', 'ontario-903')).toBe('rules ontario-903');
    expect(await docsOf('rules |', 'ontario-903')).toContain('not the law');
  });

  test('behind allow, the rules that fire on the line and no other', async () => {
    const line = 'strata\n  0 - 3 clay\n  4 - 6 limstone';
    expect((await labels(`${line} # allow |`)).toSorted()).toEqual(['interval-gap', 'unknown-term']);
    expect(await taken(`${line} # allow |`, 'interval-gap')).toBe(`${line} # allow interval-gap: `);
    expect(await labels('strata\n  0 - 3 clay\n  - 6 sand # allow |')).toEqual([]);
  });

  test('behind an empty line, the section that a log of this kind lacks', async () => {
    expect((await labels('well KH-04\nhole\n  0 - 61 152\n\n|'))[0]).toBe('strata');
    expect((await labels('status dry\nhole\n  0 - 61 152\nstrata\n  0 - 61 clay\n\n|'))[0]).toBe('abandonment');
  });
});
