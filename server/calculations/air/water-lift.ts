import { STANDARD_GRAVITY, WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'air against the water column',
  text: 'ps = p - ρ g h; p pressure of the air, Pa above the air around; h water above the bit, m; ρ 1000 kg/m³; g 9.80665 m/s²; ps Pa left to lift with, below 0 the air cannot lift the water',
  source: 'hydrostatics; 0.433 psi for each foot of fresh water',
  range: 'p and h not below 0; no loss in pipe, hammer or hose counted: the true limit is lower',
  caution:
    'Trapped pressure hurts: bleed the line before a joint is broken. Air that cannot lift the water does not clean the hole.',
};

/**
 * Pressure left to lift with when a column of fresh water stands on the air, Pa; below zero the air cannot lift it.
 * Pressure in Pa above the air around, column in m.
 *
 * ps = p − ρ g h. Source: hydrostatics.
 * Worked example: 2,400 kPa, 55.8 m: 1,853 kPa; 350 psi lifts 807 ft of water and no more.
 */
export function sparePressure(pressure: number, column: number): Outcome {
  if (!(pressure >= 0)) return refused('the pressure is below zero');
  if (!(column >= 0)) return refused('the height of the water is below zero');
  return known(pressure - WATER_DENSITY * STANDARD_GRAVITY * column);
}
