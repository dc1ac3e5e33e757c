import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'well function',
  text: 'W(u) = ∫ from u to ∞ of e^-x / x dx; series -γ - ln u - ∑ (-u)^k / (k k!) up to u = 1, continued fraction above',
  source: 'Theis 1935; Abramowitz and Stegun, Handbook of Mathematical Functions, 5.1.11 and 5.1.22',
  range: 'u above 0',
  caution: null,
};

const EULER_GAMMA = 0.577_215_664_901_532_9;
const SERIES_TERMS = 25;
const FRACTION_TERMS = 120;

/**
 * Theis's well function, the exponential integral E1; u and W without unit.
 *
 * Valid for u > 0. Source: Abramowitz and Stegun 5.1.11 (u ≤ 1) and 5.1.22 (u > 1).
 * Worked example: W(0.0001) 8.6332, W(0.01) 4.0379, W(0.1) 1.8229, W(1) 0.2194.
 */
export function wellFunction(u: number): Outcome {
  if (!(u > 0)) return refused('u is not above zero');
  return known(u <= 1 ? bySeries(u) : byFraction(u));
}

function bySeries(u: number): number {
  let sum = -EULER_GAMMA - Math.log(u);
  let power = 1;
  for (let k = 1; k <= SERIES_TERMS; k++) {
    power *= -u / k;
    sum -= power / k;
  }
  return sum;
}

/** From the innermost term outward: e^-u / (u + 1/(1 + 1/(u + 2/(1 + 2/(u + …))))). */
function byFraction(u: number): number {
  let tail = u;
  for (let k = FRACTION_TERMS; k >= 1; k--) tail = u + k / (1 + k / tail);
  return Math.exp(-u) / tail;
}
