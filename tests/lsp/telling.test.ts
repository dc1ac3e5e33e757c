import { describe, expect, test } from 'vitest';
import type { CodeLens, Hover, InlayHint, SemanticTokens, SignatureHelp } from 'vscode-languageserver-protocol';
import { editorOfTests, editorsOfTests } from './editor.ts';
import { about, type MarkedLog, openMarked, withEdits, withMarks } from './marked-log.ts';

const editor = editorOfTests();
const startEditor = editorsOfTests();

async function hovered(marked: string): Promise<{ log: MarkedLog; hover: Hover; words: string }> {
  const log = await openMarked(editor(), marked);
  const hover = await editor().request<Hover>('textDocument/hover', about(log));
  return { log, hover, words: (hover.contents as { value: string }).value };
}

const well = [
  'ground 287.4 m',
  'hole',
  '  0 - 7.2 254',
  '  - 61 152',
  'strata',
  '  0 - 3.8 clay',
  '  - 61 sand',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
];

const wellWith = (more: string): string => [...well, more].join('\n');

describe('hover', () => {
  test.each([
    ['a term', 'strata\n  0 - 6.1 [[lime|stone]], grey', [/\*\*limestone\*\*/, /Source: \S/]],
    ['a short form', 'strata\n  0 - 6.1 lst [[b|rn]]', [/\*\*brown\*\*/, /Source: \S/]],
    // NIST SP 811, appendix B: 1 ft = 0.3048 m exactly.
    [
      'a depth, with thickness and elevation',
      'ground 287.4 m\nstrata\n  0 - 3.8 clay\n  - [[6|.1]] sand',
      [/\*\*6\.1 m\*\* = \*\*20\.01 ft\*\*/, /Interval of 2\.3 m = 7\.546 ft/, /Elevation 281\.3 m/],
    ],
    // ASME B36.10M: 6 in nominal pipe is 6.625 in outside.
    ['a diameter', 'casing 0 - 7.2 steel [[168|.3]] x 6.4', [/6 in nominal/, /6\.626 in/]],
    // Worked by hand: π/4 (0.254² - 0.1683²) 7.2 = 0.2047 m³.
    [
      'figures, with the sum worked out',
      wellWith('  [[gr|out]] 0 - 7.2 neat cement, 0.29 m3'),
      [/annulus volume.*: 0\.205 m³/, /π\/4/, /254 mm \(line 3\)/, /168\.3 mm \(line 8\)/],
    ],
    // 5.65 m below a casing that stands up 0.45 m is 5.2 m below ground.
    [
      'a level, in both datums',
      wellWith('water\n  level [[5.6|5 toc]] 2026-05-07'),
      [/5\.2 m = 17\.06 ft below ground/, /\*\*5\.65 m\*\*/],
    ],
    ['the limits of a pack', 'rules [[gen|eral]]', [/not the law/, /grout-allowance.*NR 812/]],
    ['a keyword', 'casing 0 - 7.2 steel\n  [[sh|oe]] 7.2', [/```drillhand\nshoe 7\.2/]],
  ] as const)('%s', async (_, marked, wanted) => {
    const { log, hover, words } = await hovered(marked);
    for (const each of wanted) expect(words).toMatch(each);
    expect(hover.range).toEqual(log.ranges[0]);
  });

  test('a finding tells why, and the limit that it rests on', async () => {
    const { words } = await hovered(wellWith('  grout 0 - 7.2 neat cement, 0.|1 m3'));
    expect(words).toContain('`grout-short`');
    expect(words).toMatch(/Limit of `general`: .*NR 812/);
  });
});

const hintsOf = async ({ uri }: MarkedLog, from = editor()): Promise<InlayHint[]> => {
  const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
  return from.request<InlayHint[]>('textDocument/inlayHint', { textDocument: { uri }, range });
};

/** The text with the hints between double angle quotes. */
const withHints = (log: MarkedLog, hints: readonly InlayHint[]): string =>
  withEdits(
    log,
    hints.map(({ position, label }) => ({ range: { start: position, end: position }, newText: `«${label}»` })),
  );

describe('hints', () => {
  const log = [
    'hole',
    '  0 - 7.2 254',
    '  - 38 ft 152',
    'casing 0 - 7.2 steel 168.3 x 6.4',
    '  grout 0 - 7.2 neat cement, 0.29 m3',
    'drilling air 21 m3/min',
    '  7.2 - 13.2 18 min',
  ].join('\n');

  // 1 ft = 0.3048 m; π/4 (0.254² - 0.1683²) 7.2 = 0.2047 m³ and 15 % more; 6 m in 18 min.
  const shown = {
    thickness: '  - 38 ft«4.382 m» 152',
    units: '  - 38 ft«= 11.58 m» 152',
    requiredVolume: '  grout 0 - 7.2 neat cement, 0.29 m3«required 0.235 m³»',
    penetrationRate: '  7.2 - 13.2 18 min«0.333 m/min»',
  };
  const kinds = Object.keys(shown) as (keyof typeof shown)[];

  test('stand behind what they speak of', async () => {
    const opened = await openMarked(editor(), log);
    const lines = withHints(opened, await hintsOf(opened)).split('\n');
    expect(lines.filter((line) => line.includes('«'))).toEqual([
      '  - 38 ft«= 11.58 m»«4.382 m» 152',
      shown.requiredVolume,
      shown.penetrationRate,
    ]);
  });

  test.each(kinds)('of the kind %s can be switched off alone', async (kind) => {
    const other = startEditor();
    other.settings = { inlayHints: { [kind]: false } };
    await other.begin();
    const opened = await openMarked(other, log);
    const hints = await hintsOf(opened, other);
    const labels = hints.map(({ label }) => String(label));
    expect(labels).toHaveLength(kinds.length - 1);
    for (const each of kinds) {
      const label = /«(.*)»/.exec(shown[each])?.[1];
      expect(labels.includes(label ?? ''), each).toBe(each !== kind);
    }
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
