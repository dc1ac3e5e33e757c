import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'hypochlorite granules for a target strength',
  text: 'm = Vw c / f; Vw water, m³; c strength, kg/m³ (1 mg/L = 0.001); f chlorine as a fraction by weight; m kg',
  source: 'balance of mass; Indiana 327 IAC 8-3.4-24: 100 ft of 6 in, 1.5 oz of 65 %; of 10 in, 4.2 oz (50 mg/L)',
  range: 'f above 0 up to 0.80',
  caution:
    'Granules set fire to oil, grease and paper and give off a poisonous gas with acid: goggles, gloves, dry scoop, fresh air; dissolve them first, in plenty of water. Flush where the local code allows.',
};

const MOST_AVAILABLE = 0.8;

/**
 * Mass of hypochlorite granules, kg, that brings water to a target strength of chlorine. Water in m³, strength in kg/m³
 * (50 mg/L is 0.050), available chlorine as a fraction by weight. What the well itself uses up is not in it.
 *
 * Source: balance of mass; Indiana 327 IAC 8-3.4-24.
 * Worked example: 146.9 US gal, 50 mg/L, 65 %: 0.0428 kg = 1.51 oz (1.5 published).
 */
export function granulesDose(water: number, strength: number, available: number): Outcome {
  if (!(water >= 0)) return refused('the water is below zero');
  if (!(strength >= 0)) return refused('the strength is below zero');
  if (!(available > 0 && available <= MOST_AVAILABLE)) return refused('no granules have that much chlorine');
  return known((water * strength) / available);
}
