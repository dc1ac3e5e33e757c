import { LineNotes } from '../../grammar/line-notes.ts';
import type { Columns } from '../../grammar/span.ts';
import type { Line, Quantity, Value } from '../../grammar/tree.ts';
import type { FileUnits } from '../model/log.ts';
import { bodyRowOf, roleOf, siOf } from './amounts.ts';
import { touches } from './position.ts';

/** Two depths are one where they differ by less than this, in metres. */
const sameDepth = 0.0005;

/** Slots of a length that is a place in the hole; the other lengths are sizes of something. */
export const placeSlots: ReadonlySet<string> = new Set([
  ...['positions', 'intake', 'stem', 'set', 'at', 'level', 'perforated', 'drilled', 'pipe-foot'],
]);

/** A depth as it stands on a line, in metres below ground. */
export interface WrittenDepth extends Columns {
  readonly metres: number;
  /** True for a water level, which no part of the well is set at. */
  readonly isLevel: boolean;
}

const quantitiesOf = (value: Value): readonly Quantity[] => {
  if (value.kind === 'quantity') return [value];
  if (value.kind === 'interval') return value.from === null ? [value.to] : [value.from, value.to];
  return value.kind === 'list' ? value.values.flatMap(quantitiesOf) : [];
};

function writtenDepth(quantity: Quantity, isLevel: boolean, units: FileUnits): readonly WrittenDepth[] {
  const metres = quantity.datum === 'toc' ? null : siOf({ quantity, role: 'depth', slot: null }, units);
  return metres === null ? [] : [{ start: quantity.start, end: quantity.end, metres, isLevel }];
}

const isDepthSlot = (line: Line, name: string): boolean =>
  roleOf(bodyRowOf(line)?.slots.find(({ slot }) => slot === name) ?? null) === 'depth';

function readDepths(line: Line, units: FileUnits): readonly WrittenDepth[] {
  const leading = line.depths === null ? [] : quantitiesOf(line.depths);
  const depths = leading.flatMap((quantity) => writtenDepth(quantity, line.row === 'level', units));
  const places = line.items.filter(({ slot }) => placeSlots.has(slot) && isDepthSlot(line, slot));
  if (places.length === 0) return depths;
  const others = places.flatMap(({ slot, value }) =>
    quantitiesOf(value).flatMap((quantity) => writtenDepth(quantity, slot === 'level', units)),
  );
  return [...depths, ...others];
}

interface Known {
  readonly unit: string;
  readonly depths: readonly WrittenDepth[];
}

/* A line stays the same object for as long as nobody edits it; what its bare depths come to turns on the file's unit. */
const known = new LineNotes<Known>();

/** The depths that a line names; those from the top of the casing and those that are not known are left out. */
export function depthsOn(line: Line, units: FileUnits): readonly WrittenDepth[] {
  const before = known.get(line);
  if (before?.unit === units.depth) return before.depths;
  const depths = readDepths(line, units);
  known.set(line, { unit: units.depth, depths });
  return depths;
}

/** The depth under the cursor. */
export const depthAt = (line: Line, column: number, units: FileUnits): WrittenDepth | null =>
  depthsOn(line, units).find((depth) => touches(depth, column)) ?? null;

export const areSame = (a: number, b: number): boolean => Math.abs(a - b) < sameDepth;
