import { FOOT, POUND } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'chips and pellets, volume filled',
  text: 'V = m / ρb; m dry mass, kg; ρb bulk density, about 1161 kg/m³ (0.69 ft³ for 50 lb); V m³',
  source: 'bulk volume of bentonite chips as makers give it, from memory',
  range: 'mass not below 0',
  caution: 'Chips can bridge: measure the top as they go in.',
};

/** Bulk density of bentonite chips, kg/m³: 50 lb fill 0.69 ft³ (from memory; the maker's own figure counts). */
export const CHIP_BULK_DENSITY = (50 * POUND) / (0.69 * FOOT ** 3);

/**
 * Volume that dry chips or pellets fill, m³: by bulk, for they are poured and not mixed.
 *
 * V = m / ρb, mass in kg, bulk density in kg/m³. Source: makers' tables, from memory.
 * Worked example: 50 lb (22.68 kg) at 1161 kg/m³: 0.01954 m³ = 0.69 ft³.
 */
export function chipVolume(mass: number, bulkDensity: number = CHIP_BULK_DENSITY): Outcome {
  if (!(mass >= 0)) return refused('the mass is below zero');
  if (!(bulkDensity > 0)) return refused('the bulk density is not above zero');
  return known(mass / bulkDensity);
}

/** Dry mass of chips or pellets that fill a volume, kg: m = V ρb. Worked example: 0.01954 m³ take 22.68 kg. */
export function chipMass(volume: number, bulkDensity: number = CHIP_BULK_DENSITY): Outcome {
  if (!(volume >= 0)) return refused('the volume is below zero');
  if (!(bulkDensity > 0)) return refused('the bulk density is not above zero');
  return known(volume * bulkDensity);
}
