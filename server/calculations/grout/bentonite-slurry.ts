import { BENTONITE_RELATIVE_DENSITY, WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { mixVolume } from './mix-volume.ts';

export const about: Formula = {
  name: 'bentonite slurry, solids by weight',
  text: 's = mb / (mb + 1000 Vw); mb bentonite, kg; Vw water, m³',
  source: '"The Driller", high-solids grouting: 50 lb with 24 US gal is 20.0 % solids, with 14 US gal 30 %',
  range: 'bentonite above 0, water not below 0',
  caution: null,
};

/**
 * Solids of a bentonite slurry, as a fraction of its mass.
 *
 * s = mb / (mb + 1000 Vw); bentonite in kg, water in m³.
 * Source: *The Driller*, high-solids grouting. Worked example: 50 lb with 24 US gal: 0.1998; with 14 US gal: 0.2997.
 */
export function bentoniteSolids(bentonite: number, water: number): Outcome {
  if (!(bentonite > 0)) return refused('there is no bentonite');
  if (!(water >= 0)) return refused('the water is below zero');
  return known(bentonite / (bentonite + WATER_DENSITY * water));
}

/**
 * Volume of a bentonite slurry, m³, by absolute volumes with grains of relative density about 2.6 (from memory).
 *
 * Source: *The Driller*: 50 lb with 24 US gal make 3.5 ft³, with 14 US gal 2.2 ft³.
 * Worked example: 50 lb with 24 US gal: 0.0087 + 0.0908 = 0.0996 m³ = 3.52 ft³.
 */
export function bentoniteSlurryVolume(bentonite: number, water: number): Outcome {
  if (!(bentonite > 0)) return refused('there is no bentonite');
  return mixVolume([{ mass: bentonite, relativeDensity: BENTONITE_RELATIVE_DENSITY }], water);
}
