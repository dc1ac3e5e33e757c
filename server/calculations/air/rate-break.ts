import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'break of the penetration rate',
  text: 'k = larger / smaller of the rates above and below a depth; slow drilling goes with hard rock, slow rotation and little flush',
  source: 'common practice, no source',
  range: 'rates above 0',
  caution: null,
};

/**
 * How many times faster the one of two rates is than the other; rates in m/s, no unit.
 *
 * Source: common practice. Worked example: 0.333 m/min above 13.2 m, 0.667 below: a break of 2.0 at 13.2 m.
 */
export function rateBreak(above: number, below: number): Outcome {
  if (!(above > 0 && below > 0)) return refused('a rate is not above zero');
  return known(Math.max(above, below) / Math.min(above, below));
}

/**
 * Distance from a depth to the nearest of others, m; refused where there is no other.
 *
 * Worked example: a break at 13.2, contacts at 6.1 and 14.0: 0.8.
 */
export function nearestDistance(depth: number, others: readonly number[]): Outcome {
  if (others.length === 0) return refused('there is nothing to be near to');
  return known(others.reduce((least, other) => Math.min(least, Math.abs(other - depth)), Number.POSITIVE_INFINITY));
}
