import type { Columns } from '../../../grammar/span.ts';
import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { Position } from '../position.ts';

/** Where a hover is asked for. */
export interface HoverPlace {
  readonly snapshot: Snapshot;
  readonly line: Line;
  readonly at: Position;
}

/** A piece of a hover, and the columns that it speaks about. */
export interface HoverPart extends Columns {
  readonly markdown: string;
}

/** One kind of hover: null where it has nothing to say. */
export type HoverSource = (place: HoverPlace) => HoverPart | null;
