import { depthColumn, elevationColumn } from './columns/axes.ts';
import type { Column, ColumnId } from './columns/column.ts';
import { descriptionColumn } from './columns/description.ts';
import { flushColumn } from './columns/flush.ts';
import { lithologyColumn } from './columns/lithology.ts';
import { notesColumn } from './columns/notes.ts';
import { rateColumn } from './columns/rate.ts';
import { wellColumn } from './columns/well.ts';
import type { Label } from './labels.ts';
import type { Sheet } from './sheet.ts';

const allColumns: readonly Column[] = [
  depthColumn,
  elevationColumn,
  lithologyColumn,
  descriptionColumn,
  rateColumn,
  flushColumn,
  wellColumn,
  notesColumn,
];

/** Every column there is, in the order of a whole drawing. */
export const columnIds: readonly ColumnId[] = allColumns.map((column) => column.id);

/** A column with its place across the page, and the words that stand in it. */
export interface Track {
  readonly column: Column;
  readonly x: number;
  readonly width: number;
  readonly labels: readonly Label[];
}

function chosenColumns(sheet: Sheet, ids: readonly ColumnId[] | null): Column[] {
  const wanted = ids === null ? allColumns : ids.flatMap((id) => allColumns.find((column) => column.id === id) ?? []);
  return [...new Set(wanted)].filter((column) => column.isNeeded(sheet));
}

function columnWidths(columns: readonly Column[], width: number): number[] {
  const fixed = columns.reduce((sum, column) => sum + column.width, 0);
  const growing = columns.reduce((sum, column) => sum + (column.grows ? column.width : 0), 0);
  const spare = width - fixed;
  if (spare < 0 || growing === 0) return columns.map((column) => (column.width * width) / fixed);
  return columns.map((column) => column.width + (column.grows ? (spare * column.width) / growing : 0));
}

/** The columns side by side from `left`, `width` mm wide in all. */
export function tracksOf(sheet: Sheet, ids: readonly ColumnId[] | null, left: number, width: number): Track[] {
  const columns = chosenColumns(sheet, ids);
  let x = left;
  return columnWidths(columns, width).flatMap((each, n) => {
    const column = columns[n];
    if (column === undefined) return [];
    const track = { column, x, width: each, labels: column.labels(sheet, each) };
    x += each;
    return [track];
  });
}
