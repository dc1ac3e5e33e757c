import { PSI } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { dimensionRatio } from './sdr-wall.ts';

export const about: Formula = {
  name: 'collapse of steel pipe by range of its D/t',
  text: 'in psi, r = D / t: yield 2 Y (r - 1) / r²; plastic Y (A / r - B) - C; transition Y (F / r - G); elastic 46,950,000 / (r (r - 1)²); A, B, C, F, G from Y; the ranges meet where two of them give the same pressure',
  source: 'API 5C3, minimum collapse resistance, from memory',
  range: 'r above 2, Y from 30,000 to 160,000 psi; fitted to seamless tubes of 40,000 psi and more',
  caution: null,
};

const LEAST_YIELD_PSI = 30_000;
const MOST_YIELD_PSI = 160_000;

/**
 * Least collapse resistance of steel pipe by the range of D/t that it falls in: yield, plastic, transition or elastic; Pa.
 * Diameter and wall in m, yield strength in Pa. Fitted to tests of seamless tubes, it holds their usual ovality.
 *
 * Source: API 5C3, from memory; its coefficients are polynomials of Y in psi.
 * Worked example: 7 in × 0.317 in, 55,000 psi: 3,270 psi = 22.5 MPa (published table, from memory).
 */
export function gradedCollapse(outside: number, wall: number, yieldStrength: number): Outcome {
  const ratio = dimensionRatio(outside, wall);
  if (!ratio.ok) return ratio;
  const strength = yieldStrength / PSI;
  if (!(strength >= LEAST_YIELD_PSI && strength <= MOST_YIELD_PSI)) {
    return refused('the yield strength is outside 30,000 to 160,000 psi');
  }
  return known(collapsePsi(ratio.value, strength) * PSI);
}

interface Coefficients {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly f: number;
  readonly g: number;
}

function coefficients(y: number): Coefficients {
  const a = 2.8762 + 0.10679e-5 * y + 0.21301e-10 * y ** 2 - 0.53132e-16 * y ** 3;
  const b = 0.026233 + 0.50609e-6 * y;
  const c = -465.93 + 0.030867 * y - 0.10483e-7 * y ** 2 + 0.36989e-13 * y ** 3;
  const part = (3 * (b / a)) / (2 + b / a);
  const f = (46.95e6 * part ** 3) / (y * (part - b / a) * (1 - part) ** 2);
  return { a, b, c, f, g: (f * b) / a };
}

function collapsePsi(ratio: number, y: number): number {
  const { a, b, c, f, g } = coefficients(y);
  const yieldToPlastic = (Math.sqrt((a - 2) ** 2 + 8 * (b + c / y)) + (a - 2)) / (2 * (b + c / y));
  const plasticToTransition = (y * (a - f)) / (c + y * (b - g));
  const transitionToElastic = (2 + b / a) / ((3 * b) / a);
  if (ratio <= yieldToPlastic) return (2 * y * (ratio - 1)) / ratio ** 2;
  if (ratio <= plasticToTransition) return y * (a / ratio - b) - c;
  if (ratio <= transitionToElastic) return y * (f / ratio - g);
  return 46.95e6 / (ratio * (ratio - 1) ** 2);
}
