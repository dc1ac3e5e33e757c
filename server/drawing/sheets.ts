import type { ColumnId } from './columns/column.ts';
import { type DrawingOptions, defaultDrawingOptions } from './options.ts';
import { columnIds } from './tracks.ts';
import { capital } from './words.ts';

/** What is asked of a drawing on a page beside the text. */
export interface SheetWishes {
  /** Columns that the reader has switched off. */
  readonly hidden: readonly ColumnId[];
  /** Width in mm that there is for the drawing; null for as much as it likes. */
  readonly widthMm: number | null;
}

const titles: Partial<Readonly<{ [C in ColumnId]: string }>> = {
  lithology: 'Ground',
  rate: 'Penetration rate',
  well: 'Well as built',
  notes: 'Construction and water',
};

/** What a column is called where it is switched on and off. */
export const columnTitle = (id: ColumnId): string => titles[id] ?? capital(id);

/* Below this the words beside the ground and those beside the well have no room next to each other, in mm. */
const leastForAll = 150;
/* Below this a second axis would leave the words too little. */
const leastForElevation = 100;
const narrowest = 60;

/* What stands on the second sheet where there is no room for all: the well, its words, and the depths to read it by. */
const onSecond: ReadonlySet<ColumnId> = new Set(['depth', 'rate', 'flush', 'well', 'notes']);
const onSecondAlone: ReadonlySet<ColumnId> = new Set(['rate', 'flush', 'well', 'notes']);

/** How the drawing is laid out in the room that there is: all columns beside each other, or ground and well one below the other. */
export function sheetsFor({ hidden, widthMm }: SheetWishes): Partial<DrawingOptions>[] {
  const columns = columnIds.filter((id) => !hidden.includes(id));
  const width = Math.min(Math.max(widthMm ?? defaultDrawingOptions.widthMm, narrowest), defaultDrawingOptions.widthMm);
  const ground = columns.filter((id) => !onSecondAlone.has(id) && (id !== 'elevation' || width >= leastForElevation));
  const well = columns.filter((id) => onSecond.has(id));
  const isOne =
    width >= leastForAll || !well.some((id) => onSecondAlone.has(id)) || ground.every((id) => id === 'depth');
  return (isOne ? [columns] : [ground, well]).map((each) => ({ columns: each, widthMm: width }));
}
