import type { DepthScale } from '../depth-scale.ts';
import type { Label, PlacedLabel } from '../labels.ts';
import type { Box, Part } from '../shapes.ts';
import type { Sheet } from '../sheet.ts';
import type { WellFrame } from '../well/frame.ts';

export type ColumnId = 'depth' | 'elevation' | 'lithology' | 'description' | 'well' | 'notes' | 'rate' | 'flush';

/** Where a column stands and what stands beside it. */
export interface ColumnPlace {
  readonly scale: DepthScale;
  /** The column's body. */
  readonly box: Box;
  readonly labels: readonly PlacedLabel[];
  /** The well as it is drawn in this drawing; null where its column is off. */
  readonly frame: WellFrame | null;
}

/** One column of the log: a track against depth. */
export interface Column {
  readonly id: ColumnId;
  heading(sheet: Sheet): string;
  /** A second, lesser row of the heading. */
  subheading(sheet: Sheet, frame: WellFrame | null): string;
  /** Width in mm on a sheet of 180 mm. */
  readonly width: number;
  /** True for columns that take up what room is left. */
  readonly grows: boolean;
  isNeeded(sheet: Sheet): boolean;
  labels(sheet: Sheet, width: number): Label[];
  /** Labels for what goes on from the page before at a depth, where a column has such. */
  readonly continued?: (sheet: Sheet, width: number, depth: number) => Label[];
  /** How much of a label stands above its depth. */
  readonly rise: number;
  parts(sheet: Sheet, place: ColumnPlace): Part[];
}
