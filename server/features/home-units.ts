import { type Dimension, type Unit, unitById, units } from '../../grammar/units.ts';
import type { FileUnits } from '../model/log.ts';

const isNamed = (unit: Unit, { gallon }: FileUnits): boolean => {
  if (unit.gallon) return gallon !== null;
  return gallon === null || !/gal-|g[p][mh]-/.test(unit.id) || unit.id.includes(gallon.slice(4));
};

/** The units of one kind, those of the file's own system first; gallons as the file names them. */
export function homeUnits(dimension: Dimension, file: FileUnits): readonly Unit[] {
  const all = units.filter((unit) => unit.dimension === dimension && isNamed(unit, file));
  const home = unitById(file.depth)?.system === 'us' ? 'us' : 'metric';
  const isHome = ({ system }: Unit): boolean => system === 'any' || system === home;
  return [...all.filter(isHome), ...all.filter((unit) => !isHome(unit))];
}
