import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { elasticCollapse } from './elastic-collapse.ts';
import { dimensionRatio } from './sdr-wall.ts';

export const about: Formula = {
  name: 'collapse of oval steel pipe',
  text: 'P² - [2 Y / (r - 1) + (1 + 3 (r - 1) e) Pe] P + 2 Y Pe / (r - 1) = 0, the smaller root; r = D / t; Y yield strength, Pe elastic collapse, Pa; e ovality, (largest - smallest diameter) / (largest + smallest), 0.01 unless measured',
  source:
    'Timoshenko and Gere, Theory of Elastic Stability, tube with an initial ovality; form for well casing from memory',
  range: 'r above 2, Y above 0, e from 0 to 0.05',
  caution: null,
};

/** Ovality allowed for when it was not measured: 1 % (common practice, from memory). */
export const USUAL_OVALITY = 0.01;

const MOST_OVALITY = 0.05;

/**
 * Outside pressure at which an oval pipe begins to yield, Pa. Diameter and wall in m, yield strength in Pa, ovality as
 * (largest − smallest diameter) / (largest + smallest).
 *
 * The smaller root of P² − [2Y/(r−1) + (1 + 3(r−1)e) Pe] P + 2Y Pe/(r−1) = 0, r = D/t, Pe the elastic collapse pressure.
 * e = 0 gives the lesser of Pe and 2Y/(r − 1). Source: Timoshenko and Gere; the form for well casing from memory.
 * Worked example: 6.625 × 0.250 in, 35,000 psi, 1 %: 1,278 psi = 8.81 MPa.
 */
export function ovalCollapse(outside: number, wall: number, yieldStrength: number, ovality: number): Outcome {
  const ratio = dimensionRatio(outside, wall);
  const elastic = elasticCollapse(outside, wall);
  if (!ratio.ok) return ratio;
  if (!elastic.ok) return elastic;
  if (!(yieldStrength > 0)) return refused('the yield strength is not above zero');
  if (!(ovality >= 0 && ovality <= MOST_OVALITY)) return refused('the ovality is outside 0 to 5 %');
  const hoop = (2 * yieldStrength) / (ratio.value - 1);
  const sum = hoop + (1 + 3 * (ratio.value - 1) * ovality) * elastic.value;
  return known((sum - Math.sqrt(sum ** 2 - 4 * hoop * elastic.value)) / 2);
}
