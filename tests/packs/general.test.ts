import { describe, expect, test } from 'vitest';
import { limitsFor, packById, packs, strictestOf } from '../../server/packs/index.ts';
import { limitNames, Pack } from '../../server/packs/limits.ts';

describe('packs', () => {
  test.each(packs.map((pack) => [pack.id, pack] as const))('%s fits the schema', (_, pack) => {
    expect(Pack.safeParse(pack).error).toBeUndefined();
  });

  test('every limit has a value in some pack', () => {
    const held = packs.flatMap((pack) => [...Object.keys(pack.limits), ...pack.cases.map((each) => each.limit)]);
    expect([...new Set(held)].sort()).toEqual([...limitNames].sort());
  });

  // 6 US gal to 94 lb: 6 × 3.785411784 kg / (94 × 0.45359237 kg), factors of NIST SP 811.
  test('the water-cement limit is 6 US gal to a 94 lb bag', () => {
    const limit = packById('general')?.limits['water-cement-most'];
    expect(limit?.value).toBeCloseTo((6 * 3.785411784) / (94 * 0.45359237), 3);
  });
});

describe('limits in force', () => {
  const sterner = Pack.parse({
    id: 'sterner',
    title: 'Sterner',
    notice: 'A help.',
    limits: {
      'grout-allowance': limit(0.3),
      'set-time-cement': limit(3600),
      'centralizer-gap-most': limit(6),
      'stickup-least': limit(0.6),
    },
  });

  test('the strictest wins and is named', () => {
    const general = packById('general');
    const limits = strictestOf(general ? [general, sterner] : []);
    expect(limits['grout-allowance']).toMatchObject({ value: 0.3, pack: 'sterner' });
    expect(limits['centralizer-gap-most']).toMatchObject({ value: 6, pack: 'sterner' });
    expect(limits['stickup-least']).toMatchObject({ value: 0.6, pack: 'sterner' });
    expect(limits['set-time-cement']).toMatchObject({ value: 86_400, pack: 'general' });
  });

  test('no pack named means general; an unknown one is told', () => {
    expect(limitsFor([]).limits['grout-surplus']).toMatchObject({ value: 2, pack: 'general' });
    const named = limitsFor(['general', 'nowhere-1']);
    expect(named.unknown).toEqual(['nowhere-1']);
    expect(named.limits).toEqual(limitsFor([]).limits);
    expect(limitsFor(['nowhere-1']).limits).toEqual(limitsFor([]).limits);
  });
});

function limit(value: number) {
  return {
    value,
    unit: '1',
    text: String(value),
    source: 'made up for the test',
    known: 'common practice',
    date: null,
  };
}
