import { describe, expect, it } from 'vitest';
import { logOf, testOf } from './log-of.ts';

// Subtraction: 5.65 m below a casing top 0.45 m above ground is 5.20 m below ground.

const levelsOf = (...lines: string[]) => logOf(...lines).water.levels.map(({ level }) => level?.value ?? null);

const close = (values: readonly (number | null)[], expected: readonly (number | null)[]): void => {
  expect(values.map((value) => value && Number(value.toFixed(9)))).toEqual(expected);
};

describe('a level from the top of the casing', () => {
  it('is counted from the ground', () => {
    const log = logOf('water', 'level 5.65 toc 2026-05-07', 'level 5.2 2026-05-07', 'casing +0.45 - 7.2 steel 168.3');
    const [toc, bgs] = log.water.levels;
    expect(toc?.level).toMatchObject({ datum: 'toc', number: 5.65, written: '5.65 toc' });
    expect(toc?.level?.value).toBeCloseTo(5.2, 12);
    expect(bgs?.level).toMatchObject({ datum: 'bgs', value: 5.2 });
  });

  it('has no value where no casing is logged, or its top is not known', () => {
    close(levelsOf('water', 'level 5.65 toc'), [null]);
    close(levelsOf('casing ? - 7.2 steel 168.3', 'water', 'level 5.65 toc'), [null]);
  });

  it('is from the innermost string that reaches the surface', () => {
    const levels = levelsOf(
      'casing +0.5 - 60 steel 114.3',
      'casing +0.3 - 12 steel 273',
      'liner 55 - 80 pvc 88.9',
      'water',
      'level 6 toc 2026-05-07',
    );
    close(levels, [5.5]);
  });

  it('is not from an inner string that ends below, unless all do, as in a pit', () => {
    const inner = 'casing 10 - 60 steel 114.3';
    close(levelsOf('casing +0.5 - 12 steel 273', inner, 'water', 'level 6 toc'), [5.5]);
    close(levelsOf('casing 1.2 - 12 steel 273', inner, 'water', 'level 6 toc'), [7.2]);
  });

  it('counts a cut from its date on', () => {
    const levels = levelsOf(
      'casing +0.9 - 12 steel 168.3',
      'cut +0.9 to +0.45 2026-05-07',
      'water',
      'level 6 toc 2026-05-06',
      'level 6 toc 2026-05-07',
      'level 6 toc 2026-05-08',
    );
    close(levels, [5.1, 5.55, 5.55]);
  });

  it('counts a cut without a date on the lines below it', () => {
    const water = ['water', 'level 6 toc 2026-05-06'];
    const casing = ['casing +0.9 - 12 steel 168.3', 'cut +0.9 to +0.45'];
    close(levelsOf(...casing, ...water), [5.55]);
    close(levelsOf(...water, ...casing), [5.1]);
  });

  it('is not from a string that was pulled, nor from one set later', () => {
    const levels = levelsOf(
      'casing +0.5 - 40 steel 168.3',
      'casing +1 - 20 steel 114.3 temporary, pulled 2026-05-05',
      'casing +0.2 - 30 steel 88.9 set 2026-06-01',
      'water',
      'level 6 toc 2026-05-04',
      'level 6 toc 2026-05-06',
      'level 6 toc 2026-06-02',
    );
    close(levels, [5, 5.5, 5.8]);
  });
});

describe('toc in the head of a test', () => {
  const casing = 'casing +0.5 - 40 steel 168.3';

  it('holds for every level of the well, save where a line says otherwise', () => {
    const test = testOf(casing, 'test pump, 40 L/min, toc', '0 5.5', '1 6 bgs', 'recovery', '1 5.75');
    const levels = test.phases.flatMap(({ readings }) => readings.map(({ level }) => level?.value ?? null));
    close(levels, [5, 6, 5.25]);
    expect(test.toc).toBe(true);
  });

  it('leaves levels of another well without a value from the ground', () => {
    const test = testOf(casing, 'test pump, 40 L/min, toc', '0 5.5', 'observed OW-1, r 30 m', '0 3.1');
    expect(test.observed[0]?.phases[0]?.readings[0]?.level).toMatchObject({ value: null, number: 3.1, datum: 'toc' });
  });

  it('counts the cuts made before the test', () => {
    const cut = 'cut +0.5 to +0.2 2026-05-07';
    const before = testOf(casing, cut, 'test pump, toc, 2026-05-06 08:00', '0 5.5');
    const after = testOf(casing, cut, 'test pump, toc, 2026-05-08 08:00', '0 5.5');
    close(
      [before, after].map((test) => test.phases[0]?.readings[0]?.level?.value ?? null),
      [5, 5.3],
    );
  });
});
