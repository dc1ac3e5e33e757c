import { isStringSection, rowsUnder } from '../../../grammar/table.ts';
import type { Cells } from './cells.ts';

/** Widths that the lines of one group share. */
export interface Widths {
  readonly top: number;
  readonly bottom: number;
  /** The widest first column. */
  readonly first: number;
  /** The widest whole part of the second column, for numbers that line up by their point. */
  readonly whole: number;
  readonly keyword: number;
}

export type DepthWidths = Pick<Widths, 'top' | 'bottom'>;
type DepthCells = Pick<Cells, 'top' | 'bottom' | 'interval'>;

const leastDepth = 4;
const leastKeyword = 8;
const indent = '  ';
const afterDepths = 3;

const widest = (texts: readonly string[]): number => texts.reduce((most, each) => Math.max(most, each.length), 0);

const wholePart = (text: string): string => /^[^\d]*\d+/.exec(text)?.[0] ?? text;

/** A text as it is read: one blank says as much as many. */
export const inOneBlank = (text: string): string => text.trimStart().replace(/\s+/g, ' ');

/** The widths of the depths of a group of lines. */
export const depthWidths = (cells: readonly DepthCells[]): DepthWidths => ({
  top: Math.max(leastDepth, widest(cells.filter((each) => each.interval).map((each) => each.top))),
  bottom: Math.max(leastDepth, widest(cells.map((each) => each.bottom))),
});

/** The widths that a line takes by itself. */
export const ownWidths = (cells: Cells): Widths => ({
  ...depthWidths([cells]),
  first: (cells.columns[0] ?? '').length,
  whole: wholePart(cells.columns[1] ?? '').length,
  keyword: Math.max(leastKeyword, cells.keyword.length),
});

/** The widths of two groups of lines together. */
export const widened = (a: Widths, b: Widths): Widths => ({
  top: Math.max(a.top, b.top),
  bottom: Math.max(a.bottom, b.bottom),
  first: Math.max(a.first, b.first),
  whole: Math.max(a.whole, b.whole),
  keyword: Math.max(a.keyword, b.keyword),
});

/** True where a line of its own widths has room in those of a group. */
export const fitsIn = (own: Widths, group: Widths): boolean =>
  own.top <= group.top &&
  own.bottom <= group.bottom &&
  own.first <= group.first &&
  own.whole <= group.whole &&
  own.keyword <= group.keyword;

const pad = (text: string, width: number): string => text.padEnd(width);

const joinNonEmpty = (parts: readonly string[], gap: number): string =>
  parts.filter((each) => each !== '').join(' '.repeat(gap));

/** The width of the keyword column of what hangs on a section, with the gap after it. */
function underWidth(section: string): number {
  const names = rowsUnder(section === 'liner' || section === 'screen' ? 'casing' : section).map(
    (row) => row.keywords[0] ?? '',
  );
  return widest(names) + 2;
}

const depthsText = (cells: Cells): string =>
  cells.interval ? joinNonEmpty([cells.top, `- ${cells.bottom}`], 1) : cells.top;

function layDepthLine(cells: Cells, widths: Widths): string {
  if (cells.row === 'test.line') return layReading(cells, widths);
  const [first = '', ...rest] = cells.columns;
  const aligned =
    cells.row === 'drilling.line' ? first.padStart(widths.first) : rest.length > 0 ? pad(first, widths.first) : first;
  const columns = joinNonEmpty(rest.length > 0 ? [aligned, ...rest] : [aligned], afterDepths);
  if (!cells.interval) {
    const width = Math.max(underWidth(cells.row.replace('.line', '')), cells.top.length + 2);
    return `${indent}${pad(cells.top, width)}${columns}`;
  }
  return layDepths(cells, widths, columns);
}

/** An interval in its columns, and what is said of it. */
export function layDepths(cells: DepthCells, widths: DepthWidths, said: string): string {
  const bottom = said === '' ? cells.bottom : pad(cells.bottom, widths.bottom + afterDepths);
  return `${indent}${pad(cells.top, widths.top + 1)}- ${bottom}${said}`;
}

/** The column in which the dash of an interval stands. */
export const dashColumnOf = ({ top }: DepthWidths): number => indent.length + top + 1;

function layReading(cells: Cells, widths: Widths): string {
  const [elapsed = '', level, ...rest] = cells.columns;
  const width = Math.max(leastDepth, widths.first) + 2;
  if (level === undefined) return `${indent}${elapsed}`;
  const aligned = level.padStart(level.length + widths.whole - wholePart(level).length);
  return `${indent}${pad(elapsed, width)}${joinNonEmpty([aligned, ...rest], afterDepths)}`;
}

function layUnder(cells: Cells, section: string): string {
  const width =
    isStringSection(section) || !rowsUnder(section).some((row) => row.id === cells.row)
      ? underWidth('casing')
      : underWidth(section);
  const body = joinNonEmpty([depthsText(cells), ...cells.columns], afterDepths);
  return `${indent}${body === '' ? cells.keyword : pad(cells.keyword, Math.max(width, cells.keyword.length + 2)) + body}`;
}

const layHead = (cells: Cells, width: number): string => {
  const body = joinNonEmpty([depthsText(cells), ...cells.columns], afterDepths);
  return body === '' ? cells.keyword : pad(cells.keyword, width) + body;
};

/** The text of a line, its remark and comment aside. */
export function layOut(cells: Cells, widths: Widths, section: string | null): string {
  switch (cells.kind) {
    case 'header':
      return layHead(cells, widths.keyword + 2);
    case 'depth-line':
      return layDepthLine(cells, widths);
    case 'under':
      return layUnder(cells, section ?? '');
    case 'section':
    case 'line':
      return layHead(cells, cells.keyword.length + 2);
  }
}
