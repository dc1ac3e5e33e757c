import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLines, parseText, reparse, splitLines } from '../../grammar/index.ts';
import type { Line, Tree } from '../../grammar/tree.ts';

const lines = [
  ...['strata', 'hole', 'casing 0 - 9 168.3', 'water', 'test pump 40 L/min', 'drilling air', 'zorgly', 'liner 3 - 9'],
  ...['screen 3 - 9', 'screen telescoped 3 - 9', 'grout 0 - 9 neat cement', 'shoe 9', 'level 5.2', 'rate 40 L/min'],
  ...[
    '0 - 3 clay',
    '- 6 sand',
    '1 5.2',
    '38 fresh',
    '',
    '# note',
    'began 2026-05-04',
    '1,5 x',
    'owner A ; B',
    'stratta',
  ],
];

const line = fc.oneof(
  fc.constantFrom(...lines),
  fc.string({ maxLength: 24 }).map((each) => each.replace(/[\r\n]/g, ' ')),
);

const edit = fc.record({ at: fc.nat(30), removed: fc.nat(4), inserted: fc.array(line, { maxLength: 4 }) });

const spansInside = ({ text, items, problems, keyword, remark, comment }: Line): boolean =>
  [...items, ...problems, ...[keyword, remark, comment].filter((each) => each !== null)].every(
    ({ start, end }) => start >= 0 && start <= end && end <= Math.max(text.length, 0),
  );

describe('reading again after an edit', () => {
  test('gives what reading the whole gives', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 24 }), fc.array(edit, { minLength: 1, maxLength: 6 }), (start, edits) => {
        let texts = [...start];
        let tree: Tree = parseLines(texts);
        for (const { at, removed, inserted } of edits) {
          const first = Math.min(at, texts.length);
          const gone = Math.min(removed, texts.length - first);
          texts = [...texts.slice(0, first), ...inserted, ...texts.slice(first + gone)];
          tree = reparse(tree, first, gone, inserted);
        }
        expect(tree.lines).toEqual(parseLines(texts).lines);
      }),
      { numRuns: 3000 },
    );
  });

  test('keeps the lines that did not change', () => {
    const before = parseText('strata\n0 - 3 clay\n- 6 sand\nwater\n38 fresh');
    const after = reparse(before, 1, 1, ['0 - 4 clay']);
    expect(after.lines.map((each, at) => each === before.lines[at])).toEqual([true, false, true, true, true]);
  });

  test('reads again the lines whose section changed, and no further', () => {
    const before = parseText('strata\n0 - 3 clay\nwater\n38 fresh');
    const after = reparse(before, 0, 1, ['hole']);
    expect(after.lines.map((each, at) => each === before.lines[at])).toEqual([false, false, false, true]);
    expect(after.lines[1]?.row).toBe('hole.line');
  });
});

describe('any text', () => {
  test('is read without a throw, every span inside its line', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'binary' }), (text) => {
        expect(parseText(text).lines.every(spansInside)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  test('comes back line by line', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'binary' }), (text) => {
        expect(parseText(text).lines.map((each) => each.text)).toEqual(splitLines(text));
      }),
    );
  });

  test('a line far too long is reported and not read', () => {
    const [line] = parseText(`0 - 3 ${'clay '.repeat(10_000)}`).lines;
    expect(line?.problems.map((each) => each.code)).toEqual(['line-too-long']);
    expect(line?.items).toEqual([]);
  });
});

describe('the line parser', () => {
  const marks = [
    '0',
    'x',
    '.',
    '?',
    '-',
    '+',
    '~',
    '<',
    'to',
    'td',
    "'",
    '"',
    'm',
    '/',
    '2026-05-04',
    '08:15',
    '½',
    ',',
    '(',
    'bags',
    '6',
    '1/4',
    ' ',
  ];

  test('finds a place for every token', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...marks), { maxLength: 9 }), (parts) => {
        const whole = parseText(`hole\n${parts.join('')}`).lines[1]?.problems ?? [];
        expect(whole.filter((each) => each.code === 'unreadable')).toEqual([]);
      }),
      { numRuns: 20_000 },
    );
  });
});
