import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toSi, unitById } from '../../../grammar/units.ts';
import { convertedNumber } from '../../../server/features/refactorings/convert-units/exact-number.ts';
import { unitPairs } from '../../../server/features/refactorings/convert-units/unit-pairs.ts';

const pairOf = (us: string) => {
  const pair = unitPairs(null).find((each) => each.us === us);
  if (pair === undefined) throw new Error(us);
  return pair;
};

const number = fc.tuple(fc.bigInt({ min: 0n, max: 999_999n }), fc.nat({ max: 5 })).map(([digits, decimals]) => {
  const text = String(digits).padStart(decimals + 1, '0');
  return decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
});

describe('a number in the other system', () => {
  test('feet and inches are exact in metres and millimetres', () => {
    // NIST SP 811 (2008), appendix B: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly.
    expect(convertedNumber('12', pairOf('ft'), false)).toBe('3.6576');
    expect(convertedNumber('12.0', pairOf('ft'), false)).toBe('3.65760');
    expect(convertedNumber('10', pairOf('in'), false)).toBe('254.0');
  });

  test('metres have four digits more in feet', () => {
    expect(convertedNumber('7.2', pairOf('ft'), true)).toBe('23.62205');
    expect(convertedNumber('0', pairOf('ft'), true)).toBe('0');
  });

  test('there and back is the same text, whichever way it goes first, for every pair', () => {
    fc.assert(
      fc.property(number, fc.constantFrom(...unitPairs(null)), fc.boolean(), (text, pair, toUs) => {
        expect(convertedNumber(convertedNumber(text, pair, toUs), pair, !toUs)).toBe(text);
      }),
      { numRuns: 5000 },
    );
  });

  test('there and back is the same for numbers that were themselves converted, and converted again', () => {
    fc.assert(
      fc.property(
        number,
        fc.constantFrom(...unitPairs(null)),
        fc.array(fc.boolean(), { maxLength: 3 }),
        fc.boolean(),
        (text, pair, ways, toUs) => {
          const start = ways.reduce((each, way) => convertedNumber(each, pair, way), text);
          expect(convertedNumber(convertedNumber(start, pair, toUs), pair, !toUs)).toBe(start);
        },
      ),
      { numRuns: 5000 },
    );
  });

  test('the value stays what it was', () => {
    fc.assert(
      fc.property(number, fc.constantFrom(...unitPairs(null)), (text, pair) => {
        const [us, metric] = [unitById(pair.us), unitById(pair.metric)];
        if (us === undefined || metric === undefined) throw new Error(pair.us);
        const decimals = text.split('.')[1]?.length ?? 0;
        const before = toSi(Number(text), us);
        const after = toSi(Number(convertedNumber(text, pair, false)), metric);
        expect(Math.abs(after - before)).toBeLessThanOrEqual(0.501 * us.factor * 10 ** -(decimals + 2));
      }),
    );
  });
});
