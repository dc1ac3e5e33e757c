import { WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

const CAUTION =
  'Chlorine burns and gives off a poisonous gas: goggles, gloves and fresh air; never mix it with acid or ammonia; add it to water, not water to it. Flush it where the local code allows.';

export const about: Formula = {
  name: 'liquid hypochlorite for a target strength',
  text: 'V = Vw c / (1000 f g); Vw water, m³; c strength, kg/m³ (1 mg/L = 0.001); f chlorine as a fraction; g relative density of the product where f is by weight, 1 where it is by volume; V m³',
  source: 'balance of mass; Indiana 327 IAC 8-3.4-24: 100 ft of 6 in, 7.8 fl oz of 12 % (by volume, 50 mg/L)',
  range: 'f above 0 up to 0.20',
  caution: `${CAUTION} 12 % by weight is about a sixth stronger than 12 % by volume: read the label.`,
};

/** Relative density of hypochlorite solutions by their strength, about, from memory. */
export const HYPOCHLORITE_12_RELATIVE_DENSITY = 1.17;
export const HYPOCHLORITE_5_RELATIVE_DENSITY = 1.08;

const MOST_AVAILABLE = 0.2;

/**
 * Volume of liquid hypochlorite, m³, that brings water to a target strength of chlorine. Water in m³, strength in kg/m³
 * (50 mg/L is 0.050), available chlorine as a fraction. `relativeDensity` is 1 for a label by volume (g in 100 mL), the
 * product's own for a label by weight. What the well itself uses up is not in it.
 *
 * Source: balance of mass; Indiana 327 IAC 8-3.4-24.
 * Worked example: 146.9 US gal, 50 mg/L, 12 % by volume: 0.2317 L = 7.83 fl oz (7.8 published).
 */
export function liquidDose(water: number, strength: number, available: number, relativeDensity: number): Outcome {
  if (!(water >= 0)) return refused('the water is below zero');
  if (!(strength >= 0)) return refused('the strength is below zero');
  if (!(available > 0 && available <= MOST_AVAILABLE)) return refused('no liquid hypochlorite has that much chlorine');
  if (!(relativeDensity > 0)) return refused('the relative density is not above zero');
  return known((water * strength) / (WATER_DENSITY * available * relativeDensity));
}
