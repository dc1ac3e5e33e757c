import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { annulusArea } from '../geometry/annulus-area.ts';
import type { AnnulusPiece } from '../geometry/annulus-pieces.ts';

export const about: Formula = {
  name: 'uphole velocity',
  text: 'V = Q / (π/4 (D² - d²)); Q flow, m³/s; D hole, d drill pipe, m; V m/s',
  source:
    'continuity; in mm and L/s V (m/min) = 76,394 Q / (D² - d²), in inches and cfm V (ft/min) = 183.35 Q / (D² - d²); published example 283 L/s, 155.58 mm bit, 114.3 mm rod, 1,941 m/min',
  range: 'D greater than d, Q above 0, air at the pressure of its rating',
  caution: null,
};

/**
 * Velocity of the flush up the annulus, m/s, with no allowance for pressure: free air as rated, or a liquid.
 *
 * V = Q / (π/4 (D² − d²)), Q in m³/s, D and d in m.
 * Source: continuity; 76,394 Q (L/s) / (D² − d²) in mm and m/min.
 * Worked example: 283 L/s, 155.58 mm bit, 114.3 mm rod: 1,941 m/min published, 1,940.6 exact, 32.34 m/s.
 */
export function upholeVelocity(flow: number, hole: number, pipe: number): Outcome {
  if (!(flow > 0)) return refused('there is no flow');
  const area = annulusArea(hole, pipe);
  return area.ok ? known(flow / area.value) : area;
}

export interface SlowestPlace {
  readonly velocity: number;
  /** Depths of the place, m, positive downward. */
  readonly top: number;
  readonly bottom: number;
}

/**
 * The slowest velocity on the way up, m/s, and where it is: the widest annulus above the bit counts, for cuttings that
 * stall there fall back. Flow in m³/s; the pieces are those above the bit, with the drill pipe as their inner string.
 * Refused where a diameter is not known or the pipe does not fit, since the slow place might be there.
 *
 * Source: continuity. Worked example: 0.283 m³/s up 155.58 mm and then 254 mm around 114.3 mm: 7.00 m/s in the wide part.
 */
export function slowestUpholeVelocity(flow: number, pieces: readonly AnnulusPiece[]): Outcome<SlowestPlace> {
  let slowest: SlowestPlace | null = null;
  for (const { top, bottom, outer, inner } of pieces) {
    if (outer === null || inner === null) return refused(`a diameter is not known from ${top} m to ${bottom} m`);
    const velocity = upholeVelocity(flow, outer, inner);
    if (!velocity.ok) return velocity;
    if (slowest === null || velocity.value < slowest.velocity) slowest = { velocity: velocity.value, top, bottom };
  }
  return slowest ? known(slowest) : refused('there is no annulus above the bit');
}

/** Flow for an uphole velocity, m³/s: Q = V π/4 (D² − d²). 1,940.6 m/min up 155.58 mm around 114.3 mm: 283 L/s. */
export function flowForVelocity(velocity: number, hole: number, pipe: number): Outcome {
  if (!(velocity > 0)) return refused('the velocity is not above zero');
  const area = annulusArea(hole, pipe);
  return area.ok ? known(velocity * area.value) : area;
}
