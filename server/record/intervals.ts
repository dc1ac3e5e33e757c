import type { Depth, Interval, Measure } from '../model/log.ts';

/** Depth of the top in metres below ground; null where it is not known. */
export const topOf = (interval: Interval | null): number | null => interval?.top?.value ?? null;

/** Depth of the bottom in metres below ground; null where it is not known. */
export const bottomOf = (interval: Interval | null): number | null => interval?.bottom?.value ?? null;

/** A stretch of depth in metres, its top above its bottom. */
export interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

/** Both ends of an interval, the shallower first; null where one is not known or they are the same. */
export function stretchOf(interval: Interval | null): Stretch | null {
  const top = topOf(interval);
  const bottom = bottomOf(interval);
  if (top === null || bottom === null || top === bottom) return null;
  return top < bottom ? { top, bottom } : { top: bottom, bottom: top };
}

/** True where a value was written as about, in doubt, or only as a bound or a range. */
export const inDoubt = (measure: Measure | Depth | null): boolean =>
  measure !== null && (measure.approximate || measure.doubtful || measure.bound !== null || measure.high !== null);

/** True where an end of an interval is in doubt. */
export const intervalInDoubt = (interval: Interval | null): boolean =>
  interval !== null && (inDoubt(interval.top) || inDoubt(interval.bottom));
