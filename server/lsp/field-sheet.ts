import { splitLines } from '../../grammar/characters.ts';
import { readInside } from '../../grammar/sections.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { asPasted, type PastedRows, pastedRows, placeOfRows } from '../features/paste.ts';
import type { Position } from '../features/position.ts';
import { rowsToLines } from '../import/rows.ts';

/** A single row is left to the hand that pastes it, and nobody pastes a sheet as long as this. */
const leastRows = 2;
const mostLetters = 100_000;

/** What parts the columns of a sheet that has no tabs. */
const separators: readonly RegExp[] = [/\s*\|\s*/, /\s*;\s*/, /\s*,\s*/, /\s{2,}/];

const leastShare = 0.5;

const isMost = (rows: readonly string[], holds: (row: string) => boolean): boolean =>
  rows.filter(holds).length >= rows.length * leastShare;

/** True where the rows are lines of the section already, or bring sections of their own. */
function isNotation(rows: readonly string[], section: string): boolean {
  const lines = rows.map((row) => readInside(section, `  ${row.trim()}`));
  return lines.some(({ keyword }) => keyword !== null) || lines.every(({ problems }) => problems.length === 0);
}

/** Rows of columns with tabs between them, where one mark parts all of them and a depth comes first; else null. */
function tabbed(rows: readonly string[]): string | null {
  for (const separator of separators) {
    const cells = rows.map((row) => row.trim().split(separator));
    const isTable = cells.every(({ length }) => length === cells[0]?.length && length > 1);
    if (isTable && isMost(rows, (row) => /^[~+]?[\d.]+$/.test(row.trim().split(separator)[0] ?? '')))
      return cells.map((row) => row.join('\t')).join('\n');
  }
  return null;
}

/** Rows of a field sheet, parted by other marks than tabs or told in words, as lines of the section that the cursor stands in. */
export function pastedFieldSheet(snapshot: Snapshot, position: Position, text: string): PastedRows | null {
  const place = placeOfRows(snapshot, position);
  if (place === null || text.length > mostLetters) return null;
  const rows = splitLines(text).filter((row) => row.trim() !== '');
  if (rows.length < leastRows || !isMost(rows, (row) => /\d/.test(row)) || isNotation(rows, place.section)) return null;
  const table = tabbed(rows);
  if (table !== null) return pastedRows(snapshot, position, table);
  const { lines, notUnderstood } = rowsToLines(text, place.section, snapshot.log.units.depth === 'ft' ? 'ft' : 'm');
  return notUnderstood.length > rows.length * leastShare ? null : asPasted(snapshot, place, lines);
}
