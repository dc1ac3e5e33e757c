import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { dimensionRatio } from './sdr-wall.ts';

export const about: Formula = {
  name: 'collapse of steel pipe by yield of its wall',
  text: 'Py = 2 Y (r - 1) / r²; r = D / t; Y yield strength, Pa',
  source: 'API 5C3, yield strength collapse, from memory',
  range: 'r above 2, Y above 0',
  caution: 'An upper bound for thin pipe, which buckles before it yields. Use the least of the limits.',
};

/**
 * Outside pressure that brings the inner face of a pipe to yield, Pa. Diameter and wall in m, yield strength in Pa.
 *
 * Py = 2 Y (r − 1) / r², r = D/t. Source: API 5C3, from memory.
 * Worked example: 6.625 × 0.250 in, 35,000 psi: 2,542 psi = 17.52 MPa.
 */
export function yieldCollapse(outside: number, wall: number, yieldStrength: number): Outcome {
  const ratio = dimensionRatio(outside, wall);
  if (!ratio.ok) return ratio;
  if (!(yieldStrength > 0)) return refused('the yield strength is not above zero');
  return known((2 * yieldStrength * (ratio.value - 1)) / ratio.value ** 2);
}
