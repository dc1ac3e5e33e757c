import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'placed volume against the annulus',
  text: 'k = Vp / Va; Vp volume placed in the annulus, Va volume of the annulus, m³',
  source: 'ratio; 1 fills the bare annulus, 1.15 with the allowance of Wisconsin NR 812.20(3)(e)1',
  range: 'Va above 0, Vp not below 0',
  caution:
    'A large surplus is a void, a loss, or a slip of the pen; a shortfall leaves an open path beside the casing.',
};

/**
 * How many times a placed volume fills its annulus; both volumes in m³, no unit.
 *
 * Source: ratio. Worked example: 0.29 m³ placed in 0.2008 m³: 1.44.
 */
export function placedShare(placed: number, annulus: number): Outcome {
  if (!(annulus > 0)) return refused('the annulus has no volume');
  if (!(placed >= 0)) return refused('a placed volume cannot be below zero');
  return known(placed / annulus);
}
