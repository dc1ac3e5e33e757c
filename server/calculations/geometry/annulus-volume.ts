import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { annulusArea } from './annulus-area.ts';

export const about: Formula = {
  name: 'annulus, volume of an interval',
  text: 'V = ∑ π/4 (D² - d²) Δz over every change of diameter; D inside of the outer wall, d outside of the string, Δz length of the piece, m; V m³',
  source: 'geometry',
  range: 'D greater than d in every piece',
  caution: null,
};

/** A stretch of annulus between two changes of diameter: depths, positive downward, and diameters in m, volume in m³. */
export interface AnnulusPiece {
  readonly top: number;
  readonly bottom: number;
  /** Inside of the outer wall. */
  readonly outer: number;
  /** Outside of the inner string; 0 where no string stands. */
  readonly inner: number;
  readonly volume: number;
}

/**
 * Volume of an annulus of one width, m³, from its two diameters and its length, m.
 *
 * V = π/4 (D² − d²) Δz. Source: geometry.
 * Worked example: 10 in hole, 6.625 in casing, 65 ft: 19.89 ft³ = 148.8 US gal = 0.5632 m³.
 */
export function annulusVolume(outer: number, inner: number, length: number): Outcome {
  if (!(length >= 0)) return refused('the length of the annulus is below zero');
  const area = annulusArea(outer, inner);
  return area.ok ? known(area.value * length) : area;
}
