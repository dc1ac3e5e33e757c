import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'breaks of the penetration rate',
  text: 'k = larger / smaller of the rates above and below a depth; a break where k is at least the factor',
  source: 'common practice, no source; the factor is the pack’s',
  range: 'rates above 0, factor above 1',
  caution: null,
};

/** An interval drilled: depths in m, rate in m/s, null where the time was not written down. */
export interface RateSpan {
  readonly top: number;
  readonly bottom: number;
  readonly rate: number | null;
}

export interface RateBreak {
  /** Depth at which the rate changes, m. */
  readonly depth: number;
  readonly above: number;
  readonly below: number;
  /** Larger rate over the smaller one. */
  readonly factor: number;
}

/**
 * Depths at which the penetration rate changes by a factor or more, top down. Only intervals that touch are compared.
 *
 * Source: common practice. Worked example: 0.333 m/min to 13.2 m, 0.667 below: a break of 2.0 at 13.2 m.
 */
export function rateBreaks(spans: readonly RateSpan[], factor: number): Outcome<RateBreak[]> {
  if (!(factor > 1)) return refused('the factor of a break is not above one');
  const inOrder = [...spans].sort((a, b) => a.top - b.top);
  const breaks = inOrder.slice(1).flatMap((lower, index) => {
    const upper = inOrder[index];
    return upper ? breakBetween(upper, lower) : [];
  });
  return known(breaks.filter((found) => found.factor >= factor));
}

const TOUCHING = 1e-6;

function breakBetween(upper: RateSpan, lower: RateSpan): RateBreak[] {
  if (Math.abs(upper.bottom - lower.top) > TOUCHING) return [];
  const [above, below] = [upper.rate, lower.rate];
  if (above === null || below === null || !(above > 0) || !(below > 0)) return [];
  return [{ depth: lower.top, above, below, factor: Math.max(above, below) / Math.min(above, below) }];
}

/**
 * Breaks with no contact logged within a distance, m, of them; and, given the other way round, contacts without a break.
 *
 * Source: common practice. Worked example: a break at 13.2, contacts at 6.1 and 14.0, distance 0.5: 13.2 stands alone.
 */
export function depthsWithoutNeighbour(depths: readonly number[], others: readonly number[], within: number): number[] {
  return depths.filter((depth) => !others.some((other) => Math.abs(other - depth) <= within));
}
