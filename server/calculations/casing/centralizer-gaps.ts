import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'gaps between centralizers',
  text: 'gap = depth of the next place below - depth of this one, m, over the top, the centralizers and the shoe',
  source: 'subtraction',
  range: 'centralizers between the top and the shoe count',
  caution: null,
};

export interface Gap {
  /** Depths, m, positive downward. */
  readonly top: number;
  readonly bottom: number;
  readonly length: number;
}

/**
 * The gaps along a string, top down: from the top to the highest centralizer, between centralizers, and from the lowest
 * one to the shoe. Depths in m, in any order; places outside the string are left out. No centralizer gives one gap.
 *
 * Source: subtraction. Worked example: 1.5, 4 and 6.7 in a string from 0 to 7.2 m: 1.5, 2.5, 2.7 and 0.5 m.
 */
export function centralizerGaps(positions: readonly number[], shoe: number, top: number): Gap[] {
  const inside = positions.filter((depth) => depth >= top && depth <= shoe);
  const places = [...new Set([top, ...inside, shoe])].sort((a, b) => a - b);
  return places.slice(1).map((bottom, index) => {
    const from = places[index] ?? top;
    return { top: from, bottom, length: bottom - from };
  });
}

/** The widest of the gaps, the highest of them where several are as wide. Refused where there is none. */
export function widestGap(gaps: readonly Gap[]): Outcome<Gap> {
  const [first, ...others] = gaps;
  if (!first) return refused('the string has no length');
  return known(others.reduce((widest, gap) => (gap.length > widest.length ? gap : widest), first));
}
