import {
  BENTONITE_RELATIVE_DENSITY,
  CEMENT_RELATIVE_DENSITY,
  LIMESTONE_CEMENT_RELATIVE_DENSITY,
  WATER_DENSITY,
} from '../../calculations/constants.ts';
import type { Outcome } from '../../calculations/formula.ts';
import { refused } from '../../calculations/formula.ts';
import { bentoniteSlurryVolume } from '../../calculations/grout/bentonite-slurry.ts';
import { chipVolume } from '../../calculations/grout/chip-fill.ts';
import { mixVolume, type Solid } from '../../calculations/grout/mix-volume.ts';
import { waterOfRatio } from '../../calculations/grout/water-cement-ratio.ts';
import { PACK_BULK_DENSITY, packMass } from '../../calculations/screen/pack-mass.ts';
import type { Fill } from '../../model/log.ts';

/** Dry mass of all bags, or of what was weighed without them, in kg; null where neither can be told. */
export function bagsMass(fill: Fill): number | null {
  const count = fill.bags?.count?.value ?? null;
  const each = fill.bags?.massEach?.value ?? null;
  return count === null || each === null ? (fill.mass?.value ?? null) : count * each;
}

/** Relative density of the cement bagged: portland-limestone cement is lighter. */
export const cementDensity = ({ material }: Fill): number =>
  material?.id === 'portland-limestone-cement' ? LIMESTONE_CEMENT_RELATIVE_DENSITY : CEMENT_RELATIVE_DENSITY;

const sanded = new Set(['sand-cement', 'bentonite-and-sand-slurry', 'thermal-grout']);

/** True where the mix has sand in it, which no log counts by the bag: its volume cannot be told from the bags. */
export const holdsSand = ({ material }: Fill): boolean => sanded.has(material?.id ?? '');

/** The solids of a mix for a mass of what was bagged, kg: cement with its share of bentonite, or bentonite alone. */
export function solidsOf(fill: Fill, mass: number): Solid[] {
  if (fill.fillClass === 'bentonite-slurry') return [{ mass, relativeDensity: BENTONITE_RELATIVE_DENSITY }];
  const bentonite = mass * (fill.bentonite?.value ?? 0);
  const cement = { mass, relativeDensity: cementDensity(fill) };
  return bentonite > 0 ? [cement, { mass: bentonite, relativeDensity: BENTONITE_RELATIVE_DENSITY }] : [cement];
}

/** Mixing water in m3 for a mass of bagged material: as written, else from the ratio or the solids; null where none is told. */
export function waterOf(fill: Fill, mass: number | null): number | null {
  if (fill.water?.value != null) return fill.water.value;
  if (mass === null) return null;
  if (fill.fillClass === 'bentonite-slurry') return waterOfSolids(fill.solids?.value ?? null, mass);
  const ratio = fill.waterCement?.value ?? null;
  if (ratio === null) return null;
  const water = waterOfRatio(ratio, mass);
  return water.ok ? water.value : null;
}

const waterOfSolids = (share: number | null, mass: number): number | null =>
  share === null || !(share > 0) ? null : (mass / share - mass) / WATER_DENSITY;

/** True where the log tells of bags or of a mass. */
export const isWeighed = ({ bags, mass }: Fill): boolean => bags !== null || mass !== null;

/** True where the material goes in dry and fills by its bulk. */
export const goesInDry = (fill: Fill): boolean => fill.fillClass === 'bentonite-dry' || fill.fillClass === 'granular';

/** True where the material is mixed with water that the log can tell of. */
export const isMixed = (fill: Fill): boolean => fill.fillClass === 'cement' || fill.fillClass === 'bentonite-slurry';

/** Volume that a mass of dry material fills, m3. */
export function dryVolume(fill: Fill, mass: number): Outcome {
  if (fill.fillClass === 'bentonite-dry') return chipVolume(mass);
  const perCubicMetre = packMass(1, PACK_BULK_DENSITY);
  return perCubicMetre.ok ? { ok: true, value: mass / perCubicMetre.value } : perCubicMetre;
}

/** Volume of the mix that a mass of bags and water makes, m3. */
export function mixedVolume(fill: Fill, mass: number, water: number): Outcome {
  if (fill.fillClass === 'bentonite-slurry') return bentoniteSlurryVolume(mass, water);
  if (fill.fillClass === 'cement') return mixVolume(solidsOf(fill, mass), water);
  return refused('the material is not a mix of bags and water');
}
