import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'penetration rate',
  text: 'R = L / t; L length drilled, m; t time taken, s; R m/s',
  source: 'definition',
  range: 'L and t above 0',
  caution: null,
};

/**
 * Penetration rate of an interval, m/s: length drilled, m, over the time taken, s.
 *
 * Source: definition. Worked example: 6 m in 18 min: 0.005556 m/s = 0.333 m/min = 20 m/h.
 */
export function penetrationRate(length: number, time: number): Outcome {
  if (!(length > 0)) return refused('nothing was drilled');
  if (!(time > 0)) return refused('the time taken is not above zero');
  return known(length / time);
}
