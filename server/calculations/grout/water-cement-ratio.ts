import { WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'water-cement ratio',
  text: 'w/c = 1000 Vw / mc; Vw water, m³; mc cement, kg',
  source: 'ratio by mass, as in ASTM C1073 and ACI usage (from memory)',
  range: 'cement above 0, water not below 0',
  caution: null,
};

/**
 * Water-cement ratio by mass. Water in m³, cement in kg; no unit.
 *
 * w/c = 1000 Vw / mc. Source: common definition, ACI usage, from memory.
 * Worked example: 5.2 US gal (19.68 kg) to a 94 lb sack (42.64 kg): 0.462. 6.0 US gal: 0.533.
 */
export function waterCementRatio(water: number, cement: number): Outcome {
  if (!(cement > 0)) return refused('there is no cement');
  if (!(water >= 0)) return refused('the water is below zero');
  return known((WATER_DENSITY * water) / cement);
}

/** Water for a ratio by mass, m³: Vw = (w/c) mc / 1000. Cement in kg. Worked example: 360 kg at 0.5: 0.180 m³. */
export function waterOfRatio(ratio: number, cement: number): Outcome {
  if (!(cement >= 0)) return refused('the cement is below zero');
  if (!(ratio >= 0)) return refused('the water-cement ratio is below zero');
  return known((ratio * cement) / WATER_DENSITY);
}
