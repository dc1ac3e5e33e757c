import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceBetween } from '../../server/calculations/place/distance.ts';
import { checkFolder } from '../../server/folder/check-folder.ts';
import { neighboursAmong } from '../../server/folder/neighbours.ts';
import type { FolderRule } from '../../server/rules/folder/rule.ts';
import { wellsOf } from './wells.ts';

const twice = { 'a.well': 'well KH-3', 'b.well': 'well KH-3' };
const idsIn = (findings: ReturnType<typeof checkFolder>, file: string): string[] =>
  (findings.get(file) ?? []).map(({ rule, severity }) => `${severity} ${rule}`);

const broken: FolderRule = {
  id: 'breaks',
  severity: 'error',
  title: '',
  why: '',
  mend: '',
  source: '',
  flagged: [],
  silent: [],
  check: () => {
    throw new Error('it broke');
  },
};

describe('the rules of a folder', () => {
  test('take their severity from the settings of each file', () => {
    const found = checkFolder(wellsOf(twice), (file) => ({ 'well-id-twice': file === 'a.well' ? 'off' : 'error' }));
    expect(idsIn(found, 'a.well')).toEqual([]);
    expect(idsIn(found, 'b.well')).toEqual(['error well-id-twice']);
  });

  test('one that throws is one finding, and the others still run', () => {
    const found = checkFolder(wellsOf(twice), () => ({}), [broken]);
    expect(idsIn(found, 'a.well')).toEqual(['warning internal-error']);
    expect(found.get('a.well')?.[0]?.message).toContain('the rule breaks failed and was left out: it broke');
  });

  test('an id that other objects have by birth is no setting', () => {
    const found = checkFolder(wellsOf(twice), () => ({}), [{ ...broken, id: 'toString' }]);
    expect(idsIn(found, 'a.well')).toEqual(['warning internal-error']);
  });

  test('find the same, whatever the order of the wells', () => {
    const wells = wellsOf({
      ...twice,
      'c.well': 'well KH-4\ntag F 1\nplace 44.5310 -78.2064',
      'd.well': 'tag f 1\nplace 44.531 -78.2064',
    });
    const placesIn = (order: typeof wells) =>
      [...checkFolder(order, () => ({}))]
        .flatMap(([file, findings]) => findings.map(({ rule, span }) => `${file} ${span.line} ${rule}`))
        .sort();
    fc.assert(
      fc.property(fc.shuffledSubarray(wells, { minLength: wells.length }), (order) => {
        expect(placesIn(order)).toEqual(placesIn(wells));
      }),
      { numRuns: 20 },
    );
  });
});

describe('neighbours', () => {
  const [template] = wellsOf({ 'a.well': 'place 0 0' });
  const at = (latitude: number, longitude: number, file: string) => {
    if (!template?.place) throw new Error('no place');
    return { ...template, file, place: { ...template.place, latitude, longitude } };
  };

  test('are those that a look at each well would find', () => {
    const place = fc.tuple(
      fc.double({ min: 44, max: 44.05, noNaN: true }),
      fc.double({ min: -78.05, max: -78, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(place, { maxLength: 40 }), fc.integer({ min: 1, max: 3000 }), (places, metres) => {
        const wells = places.map(([latitude, longitude], index) => at(latitude, longitude, String(index)));
        const near = neighboursAmong(wells);
        for (const well of wells) {
          const expected = wells.filter((each) => each !== well && distanceBetween(well.place, each.place) <= metres);
          expect(new Set(near(well, metres).map((each) => each.well))).toEqual(new Set(expected));
        }
      }),
      { numRuns: 50 },
    );
  });

  test('come nearest first, and a well without a place has none', () => {
    const [a, b, c] = [at(44, -78, 'a'), at(44.002, -78, 'b'), at(44.001, -78, 'c')];
    const near = neighboursAmong([a, b, c]);
    expect(near(a, 500).map(({ well }) => well.file)).toEqual(['c', 'b']);
    expect(near({ ...a, place: null }, 500)).toEqual([]);
  });
});
