import { PSI } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'hydraulic collapse resistance of plastic casing',
  text: 'RHCP = 2 E / ((1 - ν²) DR (DR - 1)²); DR dimension ratio D / t; E 400,000 psi, ν 0.38 for PVC',
  source: 'ASTM F480, resistance to hydraulic collapse pressure, from memory',
  range: 'DR above 2; cool (23 °C) and short-lived pressure only',
  caution:
    'Setting cement heats plastic and takes away much of this figure: no pass is given under setting cement. Fill the casing with water, grout in lifts, follow the maker and the local code.',
};

/** Modulus of PVC, Pa (400,000 psi), and its Poisson ratio (ASTM F480, from memory). */
export const PVC_MODULUS = 400_000 * PSI;
export const PVC_POISSON = 0.38;

/**
 * Outside pressure that plastic casing resists, Pa, cool and for a short time, from its dimension ratio D/t.
 *
 * RHCP = 2E / [(1 − ν²) DR (DR − 1)²]. Source: ASTM F480, from memory.
 * Worked example: PVC SDR 17: 215 psi; SDR 21: 111; SDR 26: 57.5 psi = 0.397 MPa.
 */
export function plasticCollapse(ratio: number, modulus: number = PVC_MODULUS, poisson: number = PVC_POISSON): Outcome {
  if (!(ratio > 2)) return refused('a dimension ratio of 2 or less leaves no bore');
  return known((2 * modulus) / ((1 - poisson ** 2) * ratio * (ratio - 1) ** 2));
}
