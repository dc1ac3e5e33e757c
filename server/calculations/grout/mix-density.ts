import { WATER_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { mixVolume, type Solid } from './mix-volume.ts';

export const about: Formula = {
  name: 'density of a mix',
  text: 'ρ = (∑ m + 1000 Vw) / V; m mass of each solid, kg; Vw water, V the mix by absolute volumes, m³; ρ kg/m³',
  source: 'absolute-volume method; OAR 690-240-0475 puts 5.2 US gal a 94 lb sack at about 15.6 lb/gal',
  range: 'the mix not empty',
  caution: 'Weigh the slurry on a mud balance: a mix that was never weighed has no certain density.',
};

/**
 * Density of a grout: mass of its solids and water over its absolute volume.
 *
 * ρ = (∑ m + 1000 Vw) / V, masses in kg, volumes in m³, ρ in kg/m³.
 * Source: OAR 690-240-0475, 5.2 US gal to a 94 lb sack, about 15.6 lb/gal.
 * Worked example: 94 lb and 6.0 US gal: 144.07 lb in 1.280 ft³: 15.05 lb/gal = 1803 kg/m³.
 */
export function mixDensity(solids: readonly Solid[], water: number): Outcome {
  const volume = mixVolume(solids, water);
  if (!volume.ok) return volume;
  if (volume.value === 0) return refused('there is neither water nor solids in the mix');
  const mass = solids.reduce((sum, solid) => sum + solid.mass, WATER_DENSITY * water);
  return known(mass / volume.value);
}
