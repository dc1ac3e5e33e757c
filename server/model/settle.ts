import { toSi, unitById } from '../../grammar/units.ts';
import type { Depth } from './log.ts';

/** What depths wait for: the bottom of the hole and the top of the casing, metres below ground; null where unknown. */
export interface Bearings {
  readonly bottom: number | null;
  readonly casingTop: number | null;
}

const isDepth = (value: object): value is Depth => 'datum' in value && 'td' in value;

/** Metres below its own datum, by what was written; null for `?`. */
export function belowDatum({ number, unit }: Depth): number | null {
  const known = unitById(unit);
  return number === null || !known ? null : toSi(number, known);
}

/** A depth with its value, now that the bearings are known. */
export function settledDepth(depth: Depth, { bottom, casingTop }: Bearings): Depth {
  if (depth.td) return { ...depth, value: bottom };
  if (depth.datum !== 'toc') return depth;
  const below = belowDatum(depth);
  return { ...depth, value: below === null || casingTop === null ? null : below + casingTop };
}

function settledValue(value: unknown, bearings: Bearings): unknown {
  if (value === null || typeof value !== 'object') return value;
  if (Array.isArray(value)) return value.map((each) => settledValue(each, bearings));
  if (isDepth(value)) return settledDepth(value, bearings);
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, settledValue(each, bearings)]));
}

interface Settled {
  readonly bearings: Bearings;
  readonly entry: unknown;
}

const known = new WeakMap<object, Settled>();

/** An entry with every depth in it settled; the same object as last time where the bearings are the same. */
export function settled<T extends object>(entry: T, bearings: Bearings): T {
  const last = known.get(entry);
  const same = last?.bearings.bottom === bearings.bottom && last.bearings.casingTop === bearings.casingTop;
  if (last && same) return last.entry as T;
  const now = settledValue(entry, bearings);
  known.set(entry, { bearings, entry: now });
  return now as T;
}
