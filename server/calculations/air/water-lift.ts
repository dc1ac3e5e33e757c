import { STANDARD_GRAVITY, WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'water that air can lift',
  text: 'h = p / (ρ g); p pressure of the air, Pa above the air around; ρ 1000 kg/m³; g 9.80665 m/s²; h m of water above the bit',
  source: 'hydrostatics; 0.433 psi for each foot of fresh water',
  range: 'no loss in pipe, hammer or hose counted: the true limit is lower',
  caution:
    'Trapped pressure hurts: bleed the line before a joint is broken. Air that cannot lift the water does not clean the hole.',
};

/**
 * The highest water column that air at a pressure can start to lift, m. Pressure in Pa above the air around.
 *
 * h = p / (ρ g). Source: hydrostatics. Worked example: 2,400 kPa: 244.7 m; 350 psi: 807 ft.
 */
export function greatestWaterColumn(pressure: number, density: number = WATER_DENSITY): Outcome {
  if (!(pressure >= 0)) return refused('the pressure is below zero');
  if (!(density > 0)) return refused('the density is not above zero');
  return known(pressure / (density * STANDARD_GRAVITY));
}

/** Pressure left when a water column, m, stands on the air, Pa; below zero the air cannot lift it. 2,400 kPa, 55.8 m: 1,853 kPa. */
export function sparePressure(pressure: number, column: number, density: number = WATER_DENSITY): Outcome {
  if (!(pressure >= 0 && column >= 0)) return refused('a pressure or a height is below zero');
  if (!(density > 0)) return refused('the density is not above zero');
  return known(pressure - density * STANDARD_GRAVITY * column);
}
