import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseText, splitLines } from '../../grammar/index.ts';
import { rowById } from '../../grammar/table.ts';
import { formatText } from '../../server/features/format.ts';
import { line as anyLine, samples } from '../fuzz/material.ts';

const digits = (text: string): string => text.replace(/\b0+(?=\d)/g, '').replace(/[^1-9]/g, '');

/** What may neither be lost nor made up: figures but for their zeros, marks, names in quotes (a quote behind a figure is inches), the remark and the comment. */
const keptOf = (line: string) => {
  const { row = null, remark, comment } = parseText(line).lines[0] ?? {};
  // A line of words, such as the ids of packs, has none.
  const hasNames = row === null || rowById(row).body !== 'words';
  return {
    marks: [...line.replace(/[^?~<>#]/g, '')].sort().join(''),
    digits: [...digits(line)].sort().join(''),
    names: !hasNames ? [] : [...line.matchAll(/(?<![\d'])"[^"]*[A-Za-z][^"]*"/g)].map(([each]) => each).sort(),
    remark: remark?.text,
    comment: comment?.text,
  };
};

const sampleLines = samples.flatMap(splitLines).filter((line) => line.trim() !== '');

/** What may stand above a line. */
const head = fc.constantFrom('', 'hole', 'strata', 'casing 0 - 20 steel', 'drilling', 'water', 'test', 'abandonment');

const put = fc.constantFrom(
  ...[' ? ', '?', ' ?, ', ', ?', ' ~', '~', ' No. 6 ', ' #4 ', ' "Blue Beds" ', ' 20 ft, 6 in ', ' <0.5 mg/L '],
);

/** A line of a sample with something put behind some of its words. */
const marked = fc
  .tuple(
    fc.constantFrom(...sampleLines),
    fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), put), { minLength: 1, maxLength: 3 }),
  )
  .map(([line, pieces]) =>
    pieces.reduce((text, [share, piece]) => {
      const gaps = [...text.matchAll(/(?<=\S)(?=\s|,|$)/g)].map(({ index }) => index);
      const at = gaps[Math.floor(share * gaps.length)] ?? text.length;
      return text.slice(0, at) + piece + text.slice(at);
    }, line),
  );

const formatted = (above: string, line: string): string => splitLines(formatText(`${above}\n${line}`))[1] ?? '';

describe('formatting keeps what was typed', () => {
  test('of lines of the samples with marks put between their words', () => {
    fc.assert(
      fc.property(head, marked, (above, line) => {
        expect(keptOf(formatted(above, line))).toEqual(keptOf(line));
      }),
      { numRuns: 2000 },
    );
  });

  test('of such lines many are written anew, so that there is something to lose', () => {
    const lines = fc.sample(fc.tuple(head, marked), { numRuns: 2000, seed: 3 });
    const written = lines.filter(([above, line]) => formatted(above, line).trim() !== line.trim());
    expect(written.length).toBeGreaterThan(400);
  });

  test('of whatever else stands on a line', () => {
    fc.assert(
      fc.property(
        head,
        anyLine.filter((line) => !/[\r\n\u2028\u2029]/.test(line)),
        (above, line) => {
          const { marks, digits: figures } = keptOf(line);
          expect(keptOf(formatted(above, line))).toMatchObject({ marks, digits: figures });
        },
      ),
      { numRuns: 2000 },
    );
  });

  test.each([
    ['strata', '0 - 10 clay ?', '  0    - 10     clay, ?'],
    ['strata', '0-10 brn? cl & slty? sd, ?, fine', '  0    - 10     clay and silty? sand, brown?, fine, ?'],
    ['strata', '0-10 ?', '  0    - 10     ?'],
    ['', 'casing ? - 20? ft, 6 in', 'casing  ? - 20? ft,   6 in'],
    ['', 'casing 0 - 20 ft, steel, 6 in, joint ?', 'casing 0 - 20 ft, steel, 6 in, joint ?'],
    ['hole', '0-20ft, 6 in', '  0    - 20 ft,   6 in'],
    ['', 'owner? Larkspur Fold', 'owner     ? Larkspur Fold'],
    ['', 'owner: Larkspur Fold', 'owner: Larkspur Fold'],
    ['', 'onwer  Larkspur 12', 'onwer     Larkspur 12'],
  ])('below %j of %j', (above, line, text) => expect(formatted(above, line)).toBe(text));
});
