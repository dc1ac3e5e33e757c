import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { annulusArea } from '../geometry/annulus-area.ts';

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
