import { readInside } from '../../grammar/sections.ts';
import { type Row, rowById, rowByKeyword } from '../../grammar/table.ts';
import { unitById, unitBySpelling } from '../../grammar/units.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { linedUp } from './format/line-up.ts';
import { type Position, placeInside } from './position.ts';

/** Rows of a sheet as lines of a log. */
export interface PastedRows {
  readonly text: string;
  /** How many columns before the cursor the text takes the place of: a dash that waits for its depth gives way. */
  readonly replaceBefore: number;
  readonly lines: number;
}

/** More than anybody pastes by hand; it would only be slow. */
const mostLetters = 1_000_000;

type Cells = readonly string[];

const field = /(?:^|(?<=[\t\n]))(?:"((?:[^"]|"")*)"(?=[\t\n]|$)|([^\t\n]*))(\t|\n|$)/g;

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** The rows of a sheet as a spreadsheet copies them: cells parted by tabs, in quotes where they hold one or a line end. */
function rowsOf(text: string): readonly Cells[] {
  const rows: string[][] = [[]];
  for (const [, quoted, bare = '', end] of text.replace(/\r\n?/g, '\n').matchAll(field)) {
    rows.at(-1)?.push(oneLine(quoted === undefined ? bare : quoted.replaceAll('""', '"')));
    if (end === '\n') rows.push([]);
    if (end === '') break;
  }
  return rows.filter((cells) => cells.some((cell) => cell !== ''));
}

const depthPattern = /^[~+]?\d*[.,]?\d+\??(?:\s?(?:m|ft|cm|in|'|"))?$/i;
const intervalPattern = /^[~+]?[\d.,]+\s?(?:m|ft|')?\s*(?:-|–|—|to)\s*[~+]?[\d.,]+/i;

const isDepth = (cell: string | undefined): cell is string => cell !== undefined && depthPattern.test(cell);
const isFilled = (cell: string): boolean => cell !== '';

/** The unit that a column's heading names: `Depth (ft)`. */
const unitInHeading = (heading: string): string | null => {
  const named = /[([,]\s*([^\s()[\],]+)\s*[)\]]?\s*$/.exec(heading)?.[1];
  return named === undefined ? null : (unitBySpelling(named)?.id ?? null);
};

const withUnit = (cell: string, unit: string | null): string =>
  unit !== null && /^[~<>+]?\d*\.?\d+\??$/.test(cell) ? `${cell} ${unit}` : cell;

/** Headings stand over numbers and hold none. */
const hasHeadings = ([first, second]: readonly Cells[]): boolean =>
  first !== undefined &&
  second !== undefined &&
  !first.some((cell) => isDepth(cell) || intervalPattern.test(cell)) &&
  second.some((cell) => isDepth(cell) || intervalPattern.test(cell));

/** What a row says of its depths, and what else it holds. */
interface Split {
  readonly depths: string;
  readonly rest: Cells;
}

/** One depth a row, the first of them 0: they are tops, and each layer ends where the next begins. */
const areTops = (rows: readonly Cells[]): boolean =>
  rows.every(([first, second]) => isDepth(first) && !isDepth(second)) && Number.parseFloat(rows[0]?.[0] ?? '') === 0;

const nextTop = (rows: readonly Cells[], at: number): string => rows[at + 1]?.[0] ?? '?';

function intervalOf(cells: Cells, rows: readonly Cells[], tops: boolean, at: number): Split | null {
  const [first = '', second = '', ...others] = cells;
  if (intervalPattern.test(first)) return { depths: first, rest: [second, ...others] };
  if (tops) return { depths: `${first} - ${nextTop(rows, at)}`, rest: [second, ...others] };
  if (isDepth(first) && isDepth(second)) return { depths: `${first} - ${second}`, rest: others };
  if (first === '' && isDepth(second)) return { depths: `- ${second}`, rest: others };
  return isDepth(first) ? { depths: `- ${first}`, rest: [second, ...others] } : null;
}

function splitOf(row: Row, cells: Cells, rows: readonly Cells[], tops: boolean, at: number): Split | null {
  if (row.depths === 'interval') return intervalOf(cells, rows, tops, at);
  const [first = '', ...rest] = cells;
  return /\d/.test(first) ? { depths: first, rest } : null;
}

const problemsOf = (text: string, section: string): number => readInside(section, text).problems.length;

/** In strata the first words are the ground whatever they say, and a figure behind them belongs to something else; else null. */
function isGround(section: string, at: number, cell: string): boolean | null {
  if (section !== 'strata') return null;
  if (at === 0) return true;
  return /\d/.test(cell) ? false : null;
}

/** Cells that the line can take stand on it; the others in its remark, so that nothing is lost. */
function lineOf({ depths, rest }: Split, section: string): string {
  let text = depths;
  const remarks: string[] = [];
  for (const [at, cell] of rest.entries()) {
    if (cell === '') continue;
    const longer = text === depths ? `${text} ${cell}` : `${text}, ${cell}`;
    const fits =
      !/[;#]/.test(cell) && (isGround(section, at, cell) ?? problemsOf(longer, section) <= problemsOf(text, section));
    if (fits) text = longer;
    else remarks.push(cell);
  }
  return remarks.length === 0 ? text : `${text}  ; ${remarks.join('; ')}`;
}

const commentOf = (cells: Cells): string => `# ${cells.filter(isFilled).join(', ')}`;

/** `fileUnit` is that of bare depths; a heading that names the same adds nothing. */
function linesOf(rows: readonly Cells[], section: string, row: Row, fileUnit: string): readonly string[] {
  const headed = hasHeadings(rows);
  const headings = headed ? (rows[0] ?? []) : [];
  const units = headings.map((heading) => unitInHeading(heading));
  const body = (headed ? rows.slice(1) : rows).map((cells) =>
    cells.map((cell, at) => withUnit(cell, units[at] === fileUnit ? null : (units[at] ?? null))),
  );
  const tops = row.depths === 'interval' && areTops(body);
  const made = body.map((cells, at) => {
    const split = splitOf(row, cells, body, tops, at);
    return split === null ? commentOf(cells) : lineOf(split, section);
  });
  return headed ? [commentOf(headings), ...made] : made;
}

const inColumns = (lines: readonly string[], section: string): readonly string[] =>
  linedUp(lines.map((text) => readInside(section, `  ${text}`))).texts;

const waits = /^\s*[-–—]?\s*$/;

/** The row that reads the lines of the section that a line stands in, or opens; null where it takes no lines of depths. */
function lineRowOf(section: string | null): Row | null {
  const lines = section === null ? null : (rowByKeyword(section)?.lines ?? null);
  return lines === null ? null : rowById(lines);
}

/** Where rows may be put in: the cursor, and the section whose lines they become. */
export interface PlaceOfRows {
  readonly at: Position;
  readonly section: string;
  readonly row: Row;
}

/** The place of the cursor, in a section that takes lines of depths; null elsewhere. */
export function placeOfRows(snapshot: Snapshot, position: Position): PlaceOfRows | null {
  const at = placeInside(snapshot.lines, position);
  const section = at === null ? null : (snapshot.tree.lines[at.line]?.section ?? null);
  const row = lineRowOf(section);
  return at === null || section === null || row === null ? null : { at, section, row };
}

/** Lines as they are put in at the cursor, in the columns of their section. */
export function asPasted({ lines }: Snapshot, { at, section }: PlaceOfRows, made: readonly string[]): PastedRows {
  const shown = inColumns(made, section);
  const written = lines[at.line] ?? '';
  const before = written.slice(0, at.column);
  const after = written.slice(at.column).trim() === '' ? '' : '\n';
  const replaces = waits.test(before);
  return {
    text: `${replaces ? '' : '\n'}${shown.join('\n')}${after}`,
    replaceBefore: replaces ? before.length : 0,
    lines: shown.length,
  };
}

/** Rows parted by tabs as lines of the section that the cursor stands in; null for a text that is no such rows, and outside sections. */
export function pastedRows(snapshot: Snapshot, position: Position, text: string): PastedRows | null {
  const place = placeOfRows(snapshot, position);
  if (place === null || text.length > mostLetters || !text.includes('\t')) return null;
  const rows = rowsOf(text);
  if (!rows.some((cells) => cells.filter(isFilled).length > 1)) return null;
  const unit = unitById(snapshot.log.units.depth)?.id ?? '';
  return asPasted(snapshot, place, linesOf(rows, place.section, place.row, unit));
}
