import { describe, expect, test } from 'vitest';
import type { CodeLens, Hover, InlayHint, SemanticTokens, SignatureHelp } from 'vscode-languageserver-protocol';
import { editorOfTests, editorsOfTests } from './editor.ts';
import { about, type MarkedLog, openMarked, withEdits, withMarks } from './marked-log.ts';
import { hinted, hintKinds, hovers, withHints } from './tellings.ts';

const editor = editorOfTests();
const startEditor = editorsOfTests();

async function hovered(marked: string): Promise<{ log: MarkedLog; hover: Hover; words: string }> {
  const log = await openMarked(editor(), marked);
  const hover = await editor().request<Hover>('textDocument/hover', about(log));
  return { log, hover, words: (hover.contents as { value: string }).value };
}

/** Markdown as it is read. */
const asRead = (markdown: string): string => markdown.replace(/\*\*|`/g, '');

describe('hover', () => {
  test.each(hovers)('tells of %s', async (_, marked, said) => {
    const { log, hover, words } = await hovered(marked);
    expect(asRead(words)).toMatch(said);
    expect(hover.range).toEqual(log.ranges[0]);
  });

  test('a finding tells why, and the limit that it rests on', async () => {
    const { words } = await hovered(
      'hole\n  0 - 7.2 254\ncasing 0 - 7.2 steel 168.3 x 6.4\n  grout 0 - 7.2 neat cement, 0.|1 m3',
    );
    expect(words).toContain('`grout-short`');
    expect(words).toMatch(/Limit of `general`: .*NR 812/);
  });
});

const hintsOf = async ({ uri }: MarkedLog, from = editor()): Promise<InlayHint[]> => {
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
  return from.request<InlayHint[]>('textDocument/inlayHint', { textDocument: { uri }, range });
};

/** The lines with the hints where an editor shows them. */
const shownWith = (log: MarkedLog, hints: readonly InlayHint[]): string[] =>
  withEdits(
    log,
    hints.map(({ position, label }) => ({ range: { start: position, end: position }, newText: String(label) })),
  ).split('\n');

describe('hints', () => {
  test('stand behind what they speak of', async () => {
    const log = await openMarked(editor(), hinted.join('\n'));
    expect(shownWith(log, await hintsOf(log))).toEqual(withHints(hintKinds));
  });

  test.each(hintKinds)('of the kind %s can be switched off alone', async (off) => {
    const other = startEditor();
    other.settings = { inlayHints: { [off]: false } };
    await other.begin();
    const log = await openMarked(other, hinted.join('\n'));
    expect(shownWith(log, await hintsOf(log, other))).toEqual(withHints(hintKinds.filter((kind) => kind !== off)));
  });
});

test('totals stand above their sections, and can be switched off', async () => {
  const marked = '[[strata]]\n  0 - 3.8 clay\n  - 61 sand\n[[casing]] +0.45 - 7.2 steel 168.3 x 6.4';
  const log = await openMarked(editor(), marked);
  const lenses = await editor().request<CodeLens[]>('textDocument/codeLens', about(log));
  expect(lenses.map(({ command }) => command?.title)).toEqual(['2 layers · down to 61 m', '7.65 m long']);
  expect(lenses.map(({ range }) => range.start)).toEqual(log.ranges.map(({ start }) => start));
  const other = startEditor();
  other.settings = { codeLens: { totals: false } };
  await other.begin();
  expect(await other.request('textDocument/codeLens', about(await openMarked(other, marked)))).toEqual([]);
});

/** The standard types of the protocol, by their names: LSP 3.17, SemanticTokenTypes. */
const standardTypes = ['keyword', 'number', 'type', 'enumMember', 'property', 'string', 'comment', 'operator'];

test('tokens are of standard types, one for each thing that is said', async () => {
  const other = startEditor();
  const { capabilities } = await other.begin();
  const { legend } = capabilities.semanticTokensProvider as { legend: { tokenTypes: string[] } };
  expect(legend.tokenTypes.filter((type) => !standardTypes.includes(type))).toEqual([]);
  const log = await openMarked(
    other,
    '[[casing]] [[0]] [[-]] [[7.2]] [[steel]] [[168.3]] x [[6.4]]\n  [[grout]] [[0]] [[-]] [[7.2]] [[neat cement]], [[w/c]] [[0.5]]',
  );
  const { data } = await other.request<SemanticTokens>('textDocument/semanticTokens/full', about(log));
  const types: (string | undefined)[] = [];
  const ranges: MarkedLog['ranges'][number][] = [];
  let [line, character] = [0, 0];
  for (let at = 0; at < data.length; at += 5) {
    const [down = 0, right = 0, length = 0, type = -1] = data.slice(at, at + 5);
    character = down === 0 ? character + right : right;
    line += down;
    types.push(legend.tokenTypes[type]);
    ranges.push({ start: { line, character }, end: { line, character: character + length } });
  }
  const isMarked = ({ start }: { start: { line: number; character: number } }) =>
    log.ranges.some((range) => range.start.line === start.line && range.start.character === start.character);
  expect(ranges.filter(isMarked)).toEqual(log.ranges);
  expect(types.filter((_, at) => isMarked(ranges[at] as MarkedLog['ranges'][number]))).toEqual([
    ...['keyword', 'number', 'operator', 'number', 'enumMember', 'number', 'number'],
    ...['keyword', 'number', 'operator', 'number', 'enumMember', 'property', 'number'],
  ]);
});

describe('what a line takes', () => {
  test.each([
    ['casing 0 - 7.2 |', 'material'],
    ['casing 0 - 7.2 ste|el', 'material'],
    ['hole\n  0 - 7 |', 'diameter'],
    ['casing 0 - 7 steel\n  grout 0 - 7 neat cement, |', 'volume'],
  ])('in %j the next thing is marked', async (marked, wanted) => {
    const log = await openMarked(editor(), marked);
    const context = { triggerKind: 1, isRetrigger: false };
    const help = await editor().request<SignatureHelp>('textDocument/signatureHelp', about(log, { context }));
    const [signature] = help.signatures;
    const label = signature?.parameters?.[help.activeParameter ?? -1]?.label;
    const [start, end] = Array.isArray(label) ? label : [0, 0];
    expect(signature?.label.slice(start, end)).toContain(wanted);
  });
});

test('a line that is two depths without a dash is a hint, and is formatted to an interval', async () => {
  const log = await openMarked(editor(), 'strata\n  [[0 12]] clay');
  const { diagnostics } = await editor().report(log.uri, 1);
  const hints = diagnostics.filter(({ severity }) => severity === 4);
  expect(hints.map(({ code }) => code)).toEqual(['interval-without-dash']);
  expect(
    withMarks(
      log,
      hints.map(({ range }) => range),
    ),
  ).toBe('strata\n  [[0 12]] clay');
  const edits = await editor().request<Parameters<typeof withEdits>[1]>(
    'textDocument/formatting',
    about(log, { options: {} }),
  );
  expect(withEdits(log, edits)).toBe('strata\n  0    - 12     clay');
});
