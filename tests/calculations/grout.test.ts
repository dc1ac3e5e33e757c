import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annulusShare,
  bagsNeeded,
  bentoniteExtraWater,
  bentoniteSlurryVolume,
  bentoniteSolids,
  chipMass,
  chipVolume,
  mixDensity,
  mixVolume,
  placedShare,
  requiredGrout,
  waterCementRatio,
  waterOfRatio,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const amount = fc.double({ min: 0.001, max: 1000, noNaN: true });
const density = fc.double({ min: 1, max: 5, noNaN: true });

describe('a mix', () => {
  it('weighs what went into it', () => {
    fc.assert(
      fc.property(amount, density, amount, density, amount, (mass, first, other, second, water) => {
        const solids = [
          { mass, relativeDensity: first },
          { mass: other, relativeDensity: second },
        ];
        const weighed = figureOf(mixDensity(solids, water)) * figureOf(mixVolume(solids, water));
        expect(weighed / (mass + other + 1000 * water)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('is the sum of its grains and its water', () => {
    expect(figureOf(mixVolume([{ mass: 315, relativeDensity: 3.15 }], 0.2))).toBeCloseTo(0.3, 12);
    expect(figureOf(mixVolume([], 0))).toBe(0);
    expect(figureOf(mixVolume([{ mass: 0, relativeDensity: 3.15 }], 0.2))).toBe(0.2);
    expect(figureOf(mixDensity([{ mass: 0, relativeDensity: 3.15 }], 0.2))).toBeCloseTo(1000, 9);
  });

  it('is refused where a part cannot be', () => {
    expectRefused(/water is below/, mixVolume([], -1), mixDensity([], -1), mixVolume([], Number.NaN));
    expectRefused(/mass is below/, mixVolume([{ mass: -1, relativeDensity: 3 }], 1));
    expectRefused(/not above zero/, mixVolume([{ mass: 1, relativeDensity: 0 }], 1));
    expectRefused(/neither water nor solids/, mixDensity([], 0));
  });

  it('has a ratio of water to cement that gives the water back', () => {
    fc.assert(
      fc.property(amount, amount, (water, cement) => {
        const ratio = figureOf(waterCementRatio(water, cement));
        expect(figureOf(waterOfRatio(ratio, cement)) / water).toBeCloseTo(1, 12);
      }),
    );
    expect(figureOf(waterOfRatio(0.5, 360))).toBeCloseTo(0.18, 12);
    expect(figureOf(waterCementRatio(0, 1))).toBe(0);
    expect(figureOf(waterOfRatio(0, 0))).toBe(0);
    expectRefused(/no cement/, waterCementRatio(1, 0));
    expectRefused(/water is below/, waterCementRatio(-1, 1));
    expectRefused(/cement is below/, waterOfRatio(1, -1));
    expectRefused(/ratio is below/, waterOfRatio(-1, 1));
  });
});

describe('bags', () => {
  it('fill at least the volume, and one fewer would not', () => {
    fc.assert(
      fc.property(amount, fc.double({ min: 0.01, max: 1, noNaN: true }), (volume, each) => {
        const bags = figureOf(bagsNeeded(volume, each));
        expect(bags * each).toBeGreaterThanOrEqual(volume * (1 - 1e-6));
        expect((bags - 1) * each).toBeLessThan(volume);
      }),
    );
  });

  it('come back from the volume that they make', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500 }), fc.double({ min: 0.01, max: 0.1, noNaN: true }), (bags, each) => {
        expect(figureOf(bagsNeeded(bags * each, each))).toBe(bags);
      }),
    );
    expectRefused(/volume is below/, bagsNeeded(-1, 1));
    expectRefused(/makes no volume/, bagsNeeded(1, 0));
  });

  it('of chips come back from their volume', () => {
    fc.assert(
      fc.property(amount, fc.double({ min: 500, max: 1500, noNaN: true }), (mass, bulk) => {
        expect(figureOf(chipMass(figureOf(chipVolume(mass, bulk)), bulk)) / mass).toBeCloseTo(1, 12);
        expect(figureOf(chipMass(figureOf(chipVolume(mass)))) / mass).toBeCloseTo(1, 12);
      }),
    );
    expect(figureOf(chipVolume(0))).toBe(0);
    expect(figureOf(chipMass(0))).toBe(0);
    expectRefused(/mass is below/, chipVolume(-1));
    expectRefused(/volume is below/, chipMass(-1));
    expectRefused(/bulk density/, chipVolume(1, 0), chipMass(1, 0));
  });
});

describe('bentonite', () => {
  it('keeps its mass in the slurry', () => {
    fc.assert(
      fc.property(amount, amount, (bentonite, water) => {
        const solids = figureOf(bentoniteSolids(bentonite, water));
        expect((solids * (bentonite + 1000 * water)) / bentonite).toBeCloseTo(1, 12);
        expect(figureOf(bentoniteSlurryVolume(bentonite, water))).toBeGreaterThan(water);
      }),
    );
    expect(figureOf(bentoniteSolids(1, 0))).toBe(1);
  });

  it('is refused where there is none, and above 6 % in cement', () => {
    expectRefused(/no bentonite/, bentoniteSolids(0, 1), bentoniteSlurryVolume(0, 1));
    expectRefused(/water is below/, bentoniteSolids(1, -1), bentoniteSlurryVolume(1, -1));
    expectRefused(/outside 0 to 6/, bentoniteExtraWater(1, 0.061), bentoniteExtraWater(1, -0.01));
    expectRefused(/cement is below/, bentoniteExtraWater(-1, 0.01));
    expect(bentoniteExtraWater(1, 0.06).ok).toBe(true);
    expect(figureOf(bentoniteExtraWater(0, 0))).toBe(0);
  });
});

describe('placed against required', () => {
  it('takes off what is not in the annulus', () => {
    expect(figureOf(annulusShare(0.42, 0.0275, 0.01, 0.06))).toBeCloseTo(0.3225, 12);
    expect(figureOf(annulusShare(0.25, 0.25, 0, 0))).toBe(0);
    expectRefused(/more was left/, annulusShare(0.1, 0.05, 0.04, 0.02));
  });

  it('compares the two', () => {
    expect(figureOf(placedShare(0.3, 0.2))).toBeCloseTo(1.5, 12);
    expect(figureOf(placedShare(0, 0.2))).toBe(0);
    expectRefused(/no volume/, placedShare(0.3, 0));
    expectRefused(/below zero/, placedShare(-0.1, 0.2));
  });

  it('adds the allowance', () => {
    expect(figureOf(requiredGrout(2, 0.15))).toBeCloseTo(2.3, 12);
    expect(figureOf(requiredGrout(0, 0))).toBe(0);
    expectRefused(/annulus is below/, requiredGrout(-1, 0));
    expectRefused(/allowance is below/, requiredGrout(1, -0.1));
  });
});
