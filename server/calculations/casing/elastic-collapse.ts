import { type Formula, known, type Outcome } from '../formula.ts';
import { dimensionRatio } from './sdr-wall.ts';

export const about: Formula = {
  name: 'elastic collapse of a round pipe',
  text: 'Pe = 2 E / ((1 - ν²) r (r - 1)²); r = D / t; E modulus, Pa; ν Poisson ratio; steel E 30,000,000 psi, ν 0.3',
  source: 'theory of elastic buckling of a long tube (Bresse), as in API 5C3 before its reductions, from memory',
  range: 'r above 2; a round pipe under a short-lived, even pressure',
  caution: 'An upper bound: no real pipe is round. Use the least of the limits.',
};

/** Modulus of steel, Pa (30,000,000 psi), and its Poisson ratio, the handbook values used with API 5C3, from memory. */
export const STEEL_MODULUS = 206_842_718_795;
export const STEEL_POISSON = 0.3;

/**
 * Elastic collapse pressure of a perfectly round pipe, Pa. Diameter and wall in m, modulus in Pa.
 *
 * Pe = 2E / [(1 − ν²) r (r − 1)²], r = D/t. Source: elastic buckling of a long tube, as in API 5C3, from memory.
 * Worked example: 6.625 × 0.250 in steel, r 26.5: 3,826 psi = 26.38 MPa.
 */
export function elasticCollapse(
  outside: number,
  wall: number,
  modulus: number = STEEL_MODULUS,
  poisson: number = STEEL_POISSON,
): Outcome {
  const ratio = dimensionRatio(outside, wall);
  if (!ratio.ok) return ratio;
  return known((2 * modulus) / ((1 - poisson ** 2) * ratio.value * (ratio.value - 1) ** 2));
}
