import { type Formula, known, type Outcome, refused } from '../formula.ts';
import type { AnnulusPiece } from './annulus-volume.ts';

export const about: Formula = {
  name: 'height that a placed volume fills',
  text: 'from the bottom up, h = V / A piece by piece, A = π/4 (D² - d²); V m³, A m²; what is left above the top is surplus',
  source: 'geometry',
  range: 'V not below 0, every diameter known',
  caution: null,
};

export interface Filled {
  /** Depth that the volume reaches, m, positive downward; the top of the interval at most. */
  readonly top: number;
  /** Height filled, m. */
  readonly height: number;
  /** Volume left over when the interval is full, m³; 0 where it is not. */
  readonly surplus: number;
}

/**
 * The height that a placed volume would reach in an annulus, filled from its bottom up.
 *
 * Volume in m³, depths in m. Refused for a volume below zero and for no annulus.
 * Source: geometry.
 * Worked example: 0.2843 m³ in a 10 in hole around 6.625 in casing (0.02843 m³/m) stands 10.0 m high.
 */
export function filledTop(volume: number, pieces: readonly AnnulusPiece[]): Outcome<Filled> {
  if (!(volume >= 0)) return refused('a placed volume cannot be below zero');
  const upward = [...pieces].sort((a, b) => b.bottom - a.bottom);
  const [lowest] = upward;
  if (!lowest) return refused('the interval has no length');
  let [left, height, top] = [volume, 0, lowest.bottom];
  for (const piece of upward) {
    const share = Math.min(1, left / piece.volume);
    const risen = share * (piece.bottom - piece.top);
    height += risen;
    top = piece.bottom - risen;
    if (share < 1) return known({ top, height, surplus: 0 });
    left -= piece.volume;
  }
  return known({ top, height, surplus: left });
}
