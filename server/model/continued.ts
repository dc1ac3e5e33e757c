import type { Depth, Interval } from './log.ts';

/** The base of the last interval of a section, as far as it has been read. */
export interface Base {
  depth: Depth | null;
}

interface WithInterval {
  interval: Interval | null;
}

interface Continued {
  readonly top: Depth;
  readonly entry: unknown;
}

const known = new WeakMap<object, Continued>();

function withTop<T extends WithInterval>(entry: T, interval: Interval, top: Depth): T {
  const last = known.get(entry);
  if (last?.top === top) return last.entry as T;
  const now = { ...entry, interval: { ...interval, top } };
  known.set(entry, { top, entry: now });
  return now;
}

/**
 * An entry whose interval begins with the dash gets the base above as its top; its own base is the next one. A new
 * object is made only where the base above is another than last time.
 */
export function continuedFrom<T extends WithInterval>(entry: T, base: Base): T {
  const { interval } = entry;
  if (interval === null) return entry;
  const above = base.depth;
  if (interval.bottom !== null) base.depth = interval.bottom;
  return interval.continued && above !== null ? withTop(entry, interval, above) : entry;
}
