import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'filter pack, mass',
  text: 'm = V ρb; V volume of the annulus filled, m³; ρb bulk density, about 1600 kg/m³ for dry silica sand',
  source: 'bulk density of loose dry sand (100 lb/ft³), from memory; the volume is that of the annulus',
  range: 'V not below 0, ρb above 0',
  caution: 'Sand can bridge and settle: measure the top as it goes in and after development.',
};

/** Bulk density of loose dry filter sand, kg/m³, about, from memory. */
export const PACK_BULK_DENSITY = 1600;

/**
 * Mass of filter pack for a volume, kg. Volume in m³, bulk density in kg/m³.
 *
 * Source: bulk density from memory. Worked example: 0.25 m³: 400 kg, 16 bags of 25 kg.
 */
export function packMass(volume: number, bulkDensity: number = PACK_BULK_DENSITY): Outcome {
  if (!(volume >= 0)) return refused('the volume is below zero');
  if (!(bulkDensity > 0)) return refused('the bulk density is not above zero');
  return known(volume * bulkDensity);
}
