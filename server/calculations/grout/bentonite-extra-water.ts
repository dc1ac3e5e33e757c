import { CEMENT_SACK, US_GALLON } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'water added for bentonite in cement',
  text: 'Vx = 0.6 US gal for each 1 % of bentonite by weight of cement and each 94 lb of cement',
  source: 'Michigan R 325.1603a',
  range: 'bentonite from 0 to 6 % by weight of cement',
  caution: null,
};

/** The most bentonite that the rule speaks of, as a fraction of the cement's mass. */
const MOST_BENTONITE = 0.06;

/**
 * Water that bentonite in cement may take on top of the cement's own, m³.
 *
 * 0.6 US gal for each 1 % by weight and each 94 lb sack; cement in kg, bentonite as a fraction of the cement's mass.
 * Valid for 0 to 6 %. Source: Michigan R 325.1603a.
 * Worked example: one 94 lb sack with 5 %: 3.0 US gal = 0.01136 m³.
 */
export function bentoniteExtraWater(cement: number, bentonite: number): Outcome {
  if (!(cement >= 0)) return refused('the cement is below zero');
  if (!(bentonite >= 0 && bentonite <= MOST_BENTONITE)) return refused('bentonite is outside 0 to 6 % of the cement');
  return known((0.6 * US_GALLON * (bentonite * 100) * cement) / CEMENT_SACK);
}
