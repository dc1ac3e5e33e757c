import type { Columns } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { FileUnits } from '../model/log.ts';
import { type Amount, amountsOf, siOf } from './amounts.ts';
import { touches } from './position.ts';

/** Two depths are one where they differ by less than this, in metres. */
const sameDepth = 0.0005;

/** Slots of a length that is a place in the hole; the other lengths are sizes of something. */
const placeSlots = new Set(['positions', 'intake', 'stem', 'set', 'at', 'level', 'perforated', 'drilled']);

/** A depth as it stands on a line, in metres below ground. */
export interface WrittenDepth extends Columns {
  readonly metres: number;
  /** True for a water level, which no part of the well is set at. */
  readonly isLevel: boolean;
}

const isDepth = ({ role, slot, quantity }: Amount): boolean =>
  role === 'depth' && quantity.datum !== 'toc' && (slot === null || placeSlots.has(slot.slot));

/** The depths that a line names; those from the top of the casing and those that are not known are left out. */
export function depthsOn(line: Line, units: FileUnits): readonly WrittenDepth[] {
  return amountsOf(line)
    .filter(isDepth)
    .flatMap((amount) => {
      const metres = siOf(amount, units);
      const isLevel = line.row === 'level' || amount.slot?.slot === 'level';
      return metres === null ? [] : [{ start: amount.quantity.start, end: amount.quantity.end, metres, isLevel }];
    });
}

/** The depth under the cursor. */
export const depthAt = (line: Line, column: number, units: FileUnits): WrittenDepth | null =>
  depthsOn(line, units).find((depth) => touches(depth, column)) ?? null;

export const areSame = (a: number, b: number): boolean => Math.abs(a - b) < sameDepth;
