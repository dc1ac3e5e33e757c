import type { Columns } from '../../../grammar/span.ts';
import type { Position } from '../position.ts';

/** A text in the place of a stretch that may span lines. */
export interface Change {
  readonly first: Position;
  readonly last: Position;
  readonly text: string;
}

/** Text that takes the place of some columns of a line. */
export interface Piece extends Columns {
  readonly text: string;
}

/** A line with pieces of it written anew, of which none lies over another. */
export const withPieces = (text: string, pieces: readonly Piece[]): string =>
  [...pieces]
    .sort((a, b) => b.start - a.start || b.end - a.end)
    .reduce((result, piece) => result.slice(0, piece.start) + piece.text + result.slice(piece.end), text);

/** Where the remark or the comment of a line begins, in which blanks are its own. */
const noteAt = (text: string): number => /[;#]/.exec(text)?.index ?? text.length;

const touchesPiece = (run: Columns, pieces: readonly Piece[]): boolean =>
  pieces.some(({ start, end }) => start < run.end && end > run.start);

/** How much further right a column comes to stand through the pieces before it. */
const shiftAt = (column: number, pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { start, end, text }) => sum + (end <= column ? text.length - (end - start) : 0), 0);

/**
 * What keeps the columns of a line whose pieces are written anew: the runs of blanks behind them made wider or narrower.
 * A single blank parts words and is left alone; a run that is not wide enough keeps one.
 */
export function keptColumns(text: string, pieces: readonly Piece[]): readonly Piece[] {
  const runs = [...text.slice(0, noteAt(text)).matchAll(/(?<=\S) {2,}(?=\S|$)/g)];
  const blanks: Piece[] = [];
  for (const { 0: run, index: start } of runs) {
    const end = start + run.length;
    const shift = shiftAt(start, [...pieces, ...blanks]);
    const width = Math.max(1, run.length - shift);
    if (width !== run.length && !touchesPiece({ start, end }, pieces))
      blanks.push({ start, end, text: ' '.repeat(width) });
  }
  return blanks;
}

/** A line with pieces of it written anew, its columns kept. */
export const withPiecesInColumns = (text: string, pieces: readonly Piece[]): string =>
  withPieces(text, [...pieces, ...keptColumns(text, pieces)]);

/** One line written anew. */
export const changeOf = (line: number, before: string, text: string): Change => ({
  first: { line, column: 0 },
  last: { line, column: before.length },
  text,
});

const endOf = (lines: readonly string[]): Position => {
  const line = Math.max(0, lines.length - 1);
  return { line, column: lines[line]?.length ?? 0 };
};

/** Lines put in above the line of that number, or behind the last. */
export function lineInserted(lines: readonly string[], above: number, text: string): Change {
  const at = above < lines.length ? { line: above, column: 0 } : endOf(lines);
  return { first: at, last: at, text: above < lines.length ? `${text}\n` : `\n${text}` };
}

/** A line taken out with its line end. */
export function lineDeleted(lines: readonly string[], line: number): Change {
  if (line < lines.length - 1) return { first: { line, column: 0 }, last: { line: line + 1, column: 0 }, text: '' };
  const above = line === 0 ? { line: 0, column: 0 } : { line: line - 1, column: lines[line - 1]?.length ?? 0 };
  return { first: above, last: endOf(lines), text: '' };
}

const later = (a: Change, b: Change): number => b.first.line - a.first.line || b.first.column - a.first.column;

/** The lines after changes, of which none lies over another. */
export function changedLines(lines: readonly string[], changes: readonly Change[]): string[] {
  const result = [...lines];
  for (const { first, last, text } of [...changes].sort(later)) {
    const before = (result[first.line] ?? '').slice(0, first.column);
    const after = (result[last.line] ?? '').slice(last.column);
    result.splice(first.line, last.line - first.line + 1, ...`${before}${text}${after}`.split('\n'));
  }
  return result;
}
