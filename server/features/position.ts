import type { Columns, Span } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';

/** A place in a document: line and column from 0, columns in UTF-16 units. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

const between = (value: number, least: number, most: number): number =>
  Number.isFinite(value) ? Math.min(Math.max(Math.trunc(value), least), most) : least;

/** The nearest place that the text has; null for a text without lines. */
export function placeInside(lines: readonly string[], { line, column }: Position): Position | null {
  if (lines.length === 0) return null;
  const at = between(line, 0, lines.length - 1);
  return { line: at, column: between(column, 0, lines[at]?.length ?? 0) };
}

/** True where the cursor stands in the stretch or at one of its ends. */
export const touches = ({ start, end }: Columns, column: number): boolean => start <= column && column <= end;

/** True where the cursor stands in the stretch of that line or at one of its ends. */
export const touchesSpan = (span: Span, { line, column }: Position): boolean =>
  span.line === line && touches(span, column);

/** The line under the cursor with the place, moved inside the text; null for a text without lines. */
export function lineAt(snapshot: Snapshot, position: Position): { readonly line: Line; readonly at: Position } | null {
  const at = placeInside(snapshot.lines, position);
  const line = at === null ? undefined : snapshot.tree.lines[at.line];
  return at === null || line === undefined ? null : { line, at };
}
