import { WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'volume of a mix by absolute volumes',
  text: 'V = ∑ m / (1000 G) + Vw; m mass of each solid, kg; G its relative density (cement 3.15); Vw water, m³; V m³',
  source: 'absolute-volume method; yields in Concrete Construction, "Volume of grout"',
  range: 'masses and water not below 0, relative densities above 0',
  caution: null,
};

/** One dry ingredient of a mix: its mass in kg and the relative density of its grains. */
export interface Solid {
  readonly mass: number;
  readonly relativeDensity: number;
}

/**
 * Volume of a grout by absolute volumes: what the grains take up, and the water between them; no air.
 *
 * V = ∑ m / (1000 G) + Vw, masses in kg, water and V in m³.
 * Source: *Concrete Construction*, "Volume of grout", for a 94 lb sack with 5.0 US gal.
 * Worked example: one 94 lb sack and 5.0 US gal: 0.01354 + 0.01893 = 0.03246 m³ = 1.146 ft³ (1.145 published).
 */
export function mixVolume(solids: readonly Solid[], water: number): Outcome {
  if (!(water >= 0)) return refused('the water is below zero');
  if (solids.some((solid) => !(solid.mass >= 0))) return refused('a mass is below zero');
  if (solids.some((solid) => !(solid.relativeDensity > 0))) return refused('a relative density is not above zero');
  return known(solids.reduce((sum, solid) => sum + solid.mass / (WATER_DENSITY * solid.relativeDensity), water));
}
