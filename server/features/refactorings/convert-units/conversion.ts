import type { FileUnits } from '../../../model/log.ts';
import type { UnitPair } from './exact-number.ts';
import { unitPairs } from './unit-pairs.ts';

/** A way from one system of units to the other. */
export interface Conversion {
  readonly toUs: boolean;
  readonly from: FileUnits;
  readonly to: FileUnits;
  readonly pairs: readonly UnitPair[];
}

const systems = {
  metric: { depth: 'm', diameter: 'mm' },
  us: { depth: 'ft', diameter: 'in' },
} as const;

const isOf = ({ depth, diameter }: FileUnits, system: keyof typeof systems): boolean =>
  depth === systems[system].depth && diameter === systems[system].diameter;

/** The way to the other system; null for a file that mixes the two. */
export function conversionOf(from: FileUnits): Conversion | null {
  const toUs = isOf(from, 'metric');
  if (!toUs && !isOf(from, 'us')) return null;
  return { toUs, from, to: { ...from, ...systems[toUs ? 'us' : 'metric'] }, pairs: unitPairs(from.gallon) };
}
