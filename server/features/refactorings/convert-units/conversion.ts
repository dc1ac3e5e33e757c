import type { FileUnits } from '../../../model/log.ts';
import type { UnitPair } from './exact-number.ts';
import { unitPairs } from './unit-pairs.ts';

/** The two words of a `units` line. */
export type UnitWords = Pick<FileUnits, 'depth' | 'diameter'>;

/** A way from one pair of units to another. */
export interface Conversion {
  readonly toUs: boolean;
  readonly from: FileUnits;
  readonly to: FileUnits;
  readonly pairs: readonly UnitPair[];
  /** The units to note behind the units line, from which alone the way back can be known; null where it is plain. */
  readonly note: UnitWords | null;
  /** True on the way back to what was noted. */
  readonly isBack: boolean;
}

const us: UnitWords = { depth: 'ft', diameter: 'in' };
const metric: UnitWords = { depth: 'm', diameter: 'mm' };

export const sameUnits = (a: UnitWords, b: UnitWords): boolean => a.depth === b.depth && a.diameter === b.diameter;

/** The one system and the other, centimetres left as they are. */
const systemsFor = ({ diameter }: UnitWords): readonly UnitWords[] => [
  us,
  diameter === 'cm' ? { ...metric, diameter } : metric,
];

const targetsOf = (units: UnitWords): readonly UnitWords[] =>
  systemsFor(units).filter((target) => !sameUnits(target, units));

/** True where a file in those units would be converted to these without being told more. */
const isPlainWay = (from: UnitWords, to: UnitWords): boolean => {
  const targets = targetsOf(from);
  return targets.length === 1 && targets.every((target) => sameUnits(target, to));
};

const conversion = (from: FileUnits, to: UnitWords, toUs: boolean): Omit<Conversion, 'note' | 'isBack'> => ({
  toUs,
  from,
  to: { ...from, ...to },
  pairs: unitPairs(from.gallon),
});

const isReachedFrom = (cameFrom: UnitWords, units: UnitWords): boolean =>
  targetsOf(cameFrom).some((target) => sameUnits(target, units));

/**
 * The ways in which a file may be converted: to the other system, from units of both to either, or back to the units
 * that its units line says it came from.
 */
export function conversionsOf(from: FileUnits, cameFrom: UnitWords | null): readonly Conversion[] {
  if (cameFrom !== null && isReachedFrom(cameFrom, from))
    return [{ ...conversion(from, cameFrom, !sameUnits(from, us)), note: null, isBack: true }];
  return targetsOf(from).map((to) => ({
    ...conversion(from, to, sameUnits(to, us)),
    note: isPlainWay(to, from) ? null : from,
    isBack: false,
  }));
}
