import { type Formula, known, type Outcome, refused } from '../formula.ts';
import type { AnnulusPiece } from './annulus-volume.ts';

export const about: Formula = {
  name: 'mean diameter of hole that a placed volume fills',
  text: 'D = √((4 V / π + ∑ d² Δz) / ∑ Δz); V placed volume, m³; d outside of the string, Δz length of the piece, m; D m',
  source: 'geometry: the annulus formula solved for D',
  range: 'V not below 0, the interval longer than 0',
  caution: null,
};

/**
 * The diameter that a hole would have, the same all along, for a placed volume just to fill it around its string.
 *
 * V = π/4 ∑ (D² − d²) Δz solved for D. Volume in m³, pieces in m, D in m. Only the strings of the pieces are read, not
 * their outer walls. Refused for no length and for a volume below zero.
 * Source: geometry.
 * Worked example: 19.89 ft³ around 65 ft of 6.625 in casing fill a hole of 10.00 in.
 */
export function meanDiameterFilled(volume: number, pieces: readonly AnnulusPiece[]): Outcome {
  if (!(volume >= 0)) return refused('a placed volume cannot be below zero');
  let length = 0;
  let string = 0;
  for (const piece of pieces) {
    length += piece.bottom - piece.top;
    string += piece.inner * piece.inner * (piece.bottom - piece.top);
  }
  if (!(length > 0)) return refused('the interval has no length');
  return known(Math.sqrt(((4 * volume) / Math.PI + string) / length));
}
