import { describe, it } from 'vitest';
import {
  annulusArea,
  granulesDose,
  HYPOCHLORITE_12_RELATIVE_DENSITY,
  liquidDose,
} from '../../server/calculations/index.ts';
import { expectNear, figureOf, fluidOunce, foot, gallon, inch, ounce } from './measures.ts';

// Indiana 327 IAC 8-3.4-24, for each 100 ft of well. Its doses come to 50 mg/L.
const strength = 0.05;

describe('disinfection doses', () => {
  it.each([
    [6, 146.9],
    [10, 408],
  ])('100 ft of %d in hold %d US gal', (diameter, gallons) => {
    expectNear((figureOf(annulusArea(diameter * inch, 0)) * 100 * foot) / gallon, gallons, 0.06);
  });

  it.each([
    [146.9, 1.5],
    [408, 4.2],
  ])('%d US gal take %d oz of 65 % granules', (gallons, ounces) => {
    expectNear(figureOf(granulesDose(gallons * gallon, strength, 0.65)) / ounce, ounces, 0.05);
  });

  it('146.9 US gal take 7.8 fl oz of 12 % by volume', () => {
    expectNear(figureOf(liquidDose(146.9 * gallon, strength, 0.12, 1)) / fluidOunce, 7.8, 0.05);
  });

  it('7.8 fl oz of 12 % by weight would give 58 mg/L instead of 50 (derived, relative density from memory)', () => {
    const perStrength = figureOf(liquidDose(146.9 * gallon, strength, 0.12, HYPOCHLORITE_12_RELATIVE_DENSITY));
    expectNear((strength * 1000 * 7.8 * fluidOunce) / perStrength, 58, 0.6);
  });
});
