import type { Depth, Interval } from '../../model/log.ts';
import { capital } from '../words.ts';
import type { Side, WellFrame } from './frame.ts';

/** `?` for what is doubtful or not known, `~` for what the notes say about. */
export type DoubtSign = '?' | '~';

/** A place on the well that is marked as not sure. */
export interface DoubtSpot {
  readonly sign: DoubtSign;
  /** Metres below ground. */
  readonly depth: number;
  readonly line: number;
  readonly title: string;
  /** Where across the page it wishes to stand. */
  readonly place: (frame: WellFrame) => number;
  /** The side to which it gives way. */
  readonly side: Side;
}

const meanings: Readonly<{ [S in DoubtSign]: string }> = { '?': 'not certain', '~': 'approximate' };

/** How a depth is marked; null for one that is sure, and where there is none. */
export function markOf(depth: Depth | null): DoubtSign | null {
  if (depth?.value == null || !Number.isFinite(depth.value)) return null;
  if (depth.doubtful) return '?';
  return depth.approximate ? '~' : null;
}

/** A mark at a depth; its words are what it questions, and how. */
export const spotAt = (
  sign: DoubtSign,
  depth: number,
  line: number,
  what: string,
  place: DoubtSpot['place'],
  side: Side,
): DoubtSpot => ({ sign, depth, line, title: `${capital(what)} ${meanings[sign]}`, place, side });

/** Marks at the ends of an interval that are not sure. */
export function bothEnds(
  interval: Interval | null,
  line: number,
  what: string,
  placeAt: (depth: number) => DoubtSpot['place'],
  side: Side,
): DoubtSpot[] {
  const ends = [
    ['Top', interval?.top ?? null],
    ['Foot', interval?.bottom ?? null],
  ] as const;
  return ends.flatMap(([end, depth]) => {
    const sign = markOf(depth);
    if (sign === null || depth?.value == null) return [];
    return [spotAt(sign, depth.value, line, `${end} of ${what}`, placeAt(depth.value), side)];
  });
}
