import { describe, expect, it } from 'vitest';
import {
  bagsNeeded,
  bentoniteExtraWater,
  bentoniteSlurryVolume,
  bentoniteSolids,
  CEMENT_RELATIVE_DENSITY,
  CEMENT_SACK,
  chipVolume,
  mixDensity,
  mixVolume,
  requiredGrout,
  waterCementRatio,
} from '../../server/calculations/index.ts';
import { cubicFoot, expectNear, figureOf, gallon, pound, poundPerGallon } from './measures.ts';

const sack = [{ mass: 94 * pound, relativeDensity: CEMENT_RELATIVE_DENSITY }];
const yieldOf = (gallons: number): number => figureOf(mixVolume(sack, gallons * gallon)) / cubicFoot;
const weightOf = (gallons: number): number => figureOf(mixDensity(sack, gallons * gallon)) / poundPerGallon;

describe('neat cement, one 94 lb sack', () => {
  it('weighs 94 lb', () => expectNear(CEMENT_SACK / pound, 94, 1e-9));

  it('yields 1.145 ft³ with 5.0 US gal (Concrete Construction, "Volume of grout")', () => {
    expectNear(yieldOf(5), 1.145, 0.002);
  });

  it('weighs about 15.6 lb/gal with 5.2 US gal (OAR 690-240-0475) and yields 1.173 ft³ (derived)', () => {
    expectNear(weightOf(5.2), 15.6, 0.06);
    expectNear(yieldOf(5.2), 1.173, 0.0006);
  });

  it('yields 1.280 ft³ and weighs 15.05 lb/gal with 6.0 US gal (derived)', () => {
    expectNear(yieldOf(6), 1.28, 0.0006);
    expectNear(weightOf(6), 15.05, 0.006);
  });

  it('has water-cement ratios of 0.46 and 0.53 with 5.2 and 6.0 US gal (from memory)', () => {
    expectNear(figureOf(waterCementRatio(5.2 * gallon, CEMENT_SACK)), 0.46, 0.005);
    expectNear(figureOf(waterCementRatio(6 * gallon, CEMENT_SACK)), 0.53, 0.005);
  });
});

describe('grout for a worked annulus', () => {
  // Derived here: 19.89 ft³ is 17 sacks at 5.2 US gal; with 15 % (Wisconsin NR 812.20(3)(e)1) 22.88 ft³, 20 sacks.
  const annulus = 19.89 * cubicFoot;
  const perSack = figureOf(mixVolume(sack, 5.2 * gallon));

  it('takes 17 sacks bare', () => expect(figureOf(bagsNeeded(annulus, perSack))).toBe(17));

  it('takes 22.88 ft³ and 20 sacks with the allowance', () => {
    const required = figureOf(requiredGrout(annulus, 0.15));
    expectNear(required / cubicFoot, 22.88, 0.01);
    expect(figureOf(bagsNeeded(required, perSack))).toBe(20);
  });
});

describe('bentonite', () => {
  // The Driller, high-solids grouting: a 50 lb bag.
  it.each([
    { gallons: 24, solids: 20, cubicFeet: 3.5 },
    { gallons: 14, solids: 30, cubicFeet: 2.2 },
  ])('50 lb with $gallons US gal: $solids % solids, $cubicFeet ft³', ({ gallons, solids, cubicFeet }) => {
    expectNear(figureOf(bentoniteSolids(50 * pound, gallons * gallon)) * 100, solids, 0.05);
    expectNear(figureOf(bentoniteSlurryVolume(50 * pound, gallons * gallon)) / cubicFoot, cubicFeet, 0.05);
  });

  it('takes 0.6 US gal more water for each 1 % in a sack of cement (Michigan R 325.1603a)', () => {
    expectNear(figureOf(bentoniteExtraWater(94 * pound, 0.01)) / gallon, 0.6, 1e-9);
    expectNear(figureOf(bentoniteExtraWater(2 * 94 * pound, 0.05)) / gallon, 6, 1e-9);
  });

  it('fills about 0.69 ft³ with 50 lb of chips (from memory)', () => {
    expectNear(figureOf(chipVolume(50 * pound)) / cubicFoot, 0.69, 0.005);
  });
});
