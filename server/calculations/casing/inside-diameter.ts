import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'inside diameter of pipe',
  text: 'd = D - 2 t; D outside, t wall, m',
  source: 'geometry',
  range: 't above 0 and less than D / 2',
  caution: null,
};

/**
 * Inside diameter of pipe, m: d = D − 2 t. Outside diameter and wall in m; valid for 0 < t < D/2.
 *
 * Source: geometry. Worked example: 168.3 mm with a wall of 6.4 mm: 155.5 mm.
 */
export function insideDiameter(outside: number, wall: number): Outcome {
  if (!(wall > 0)) return refused('the wall has no thickness');
  if (!(outside > 2 * wall)) return refused('two walls are as thick as the pipe is wide');
  return known(outside - 2 * wall);
}
