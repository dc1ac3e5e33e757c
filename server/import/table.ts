import * as l10n from '@vscode/l10n';
import { type Cells, cellsOf, type Delimiter, type TableRow } from './cells.ts';
import {
  type ColumnMap,
  intervalCell,
  isCertain,
  isDecimalComma,
  isWhole,
  lengthCell,
  mapByContent,
  mapByName,
  mapText,
  readMap,
  roleNamed,
} from './columns.ts';
import { both, type Draft, type DraftItem, type DraftLayer, line, nothing, type Outcome } from './draft.ts';
import type { Drafted } from './finish.ts';
import type { Length } from './lengths.ts';
import type { DepthUnit, Question, ReadOptions, Trouble } from './notes.ts';
import { readPlain } from './plain.ts';
import { statementOf } from './statement.ts';
import { waterFound } from './statements/water.ts';
import { tidy } from './typography.ts';
import { tellsUnits, unitInName } from './units-told.ts';

/** A text found to be a table. */
export interface Table extends Cells {
  readonly delimiter: Delimiter;
  /** Index of the row that names the columns; -1 where none does. */
  readonly header: number;
}

const knownNames = (cells: readonly string[]): number => new Set(cells.flatMap((cell) => roleNamed(cell) ?? [])).size;

/** True for a first row without a figure above rows with figures, as wide as they are. */
const isUnknownHeader = ([first, second]: readonly TableRow[]): boolean =>
  first !== undefined &&
  second !== undefined &&
  first.cells.length > 1 &&
  first.cells.length === second.cells.length &&
  first.cells.every((cell) => /\p{L}/u.test(cell) && !/\d/.test(cell)) &&
  second.cells.some(isNumeric);

function headerIn(rows: readonly TableRow[]): number {
  const named = rows.slice(0, 10).findIndex(({ cells }) => knownNames(cells) >= 2);
  return named === -1 && isUnknownHeader(rows) ? 0 : named;
}

const isNumeric = (cell: string | undefined): boolean =>
  cell !== undefined && (lengthCell(cell) !== null || isDecimalComma(cell));

/** Rows of which two cells are numbers, or one an interval, and one has words: the mark of a table of intervals. */
const isIntervalRow = ({ cells }: TableRow): boolean => {
  const numbers = cells.filter((cell) => isNumeric(cell)).length;
  const spans = cells.filter((cell) => intervalCell(cell) !== null).length;
  return numbers + 2 * spans >= 2 && cells.some((cell) => /\p{L}{2}/u.test(cell) && !isNumeric(cell));
};

const atLeast = (rows: readonly TableRow[], share: number, fits: (row: TableRow) => boolean): boolean =>
  rows.length >= 2 && rows.filter(fits).length >= share * rows.length;

function isTable(rows: readonly TableRow[], header: number): boolean {
  const body = rows.slice(header + 1).filter(({ cells }) => !isRule(cells));
  const several = body.filter(({ cells }) => cells.length > 1);
  if (header !== -1) return several.length > 0 && several.length >= body.length / 2;
  return atLeast(body, 0.6, isIntervalRow);
}

const delimiters: readonly Delimiter[] = ['\t', '|', ';', ',', 'blanks'];

const marks: Readonly<Record<Delimiter, RegExp>> = {
  '\t': /\t/,
  '|': /\|/,
  ';': /;/,
  ',': /,/,
  blanks: /\S(?: {2,}|\t)\S/,
};

/** Rows without a header that each begin with their interval: as lines of text they leave nothing open. */
const readsAsLines = (rows: readonly TableRow[]): boolean =>
  rows.every(({ cells: [first = ''] }) => intervalCell(first) !== null);

/** The table that a text is; null where it is notes in plain text. The whole of it is read only if its beginning fits. */
export function tableIn(lines: readonly string[]): Table | null {
  const sample = lines.filter((each) => each.trim() !== '').slice(0, 60);
  for (const delimiter of delimiters) {
    if (sample.filter((each) => marks[delimiter].test(each)).length < Math.max(2, sample.length / 2)) continue;
    const start = cellsOf(sample, delimiter).rows;
    if (!isTable(start, headerIn(start)) || (headerIn(start) === -1 && readsAsLines(start))) continue;
    const whole = cellsOf(lines, delimiter);
    return { ...whole, delimiter, header: headerIn(whole.rows) };
  }
  return null;
}

/** A table that the person says is one. */
export function tableSaid(lines: readonly string[]): Table {
  const sample = lines.filter((each) => each.trim() !== '').slice(0, 60);
  const count = (delimiter: Delimiter) => sample.filter((each) => marks[delimiter].test(each)).length;
  const [delimiter = ','] = [...delimiters].sort((a, b) => count(b) - count(a));
  const whole = cellsOf(lines, delimiter);
  const [first] = whole.rows;
  const named = headerIn(whole.rows);
  const hasHeader = first !== undefined && !first.cells.some((cell) => isNumeric(cell) || intervalCell(cell) !== null);
  return { ...whole, delimiter, header: named === -1 && hasHeader ? 0 : named };
}

function isRule(cells: readonly string[]): boolean {
  return cells.every((cell) => /^[\s:=+-]*$/.test(cell));
}

interface Reading {
  readonly map: ColumnMap;
  readonly table: Table;
  readonly lines: readonly string[];
  readonly options: ReadOptions;
  /** True where the numbers of this table have a decimal comma. */
  readonly comma: boolean;
}

interface Above {
  well: string | null;
}

const cellsAt = (row: TableRow, columns: readonly number[] | undefined): string[] =>
  (columns ?? []).map((column) => row.cells[column] ?? '').filter((cell) => cell.trim() !== '');

const number = (cell: string | undefined, { comma }: Reading): Length | null =>
  cell === undefined ? null : lengthCell(comma && isDecimalComma(cell) ? cell.replace(',', '.') : cell);

interface Depths {
  readonly layer: Pick<DraftLayer, 'how' | 'from' | 'to'>;
  readonly depths: readonly Length[];
}

const none: Depths = { layer: { how: 'none', from: null, to: null }, depths: [] };

/** The depths of a row by the columns that it has them in; null where a filled cell is no length. */
function depthsOf(row: TableRow, reading: Reading): Depths | null {
  const { map } = reading;
  const [span] = cellsAt(row, map.interval);
  const interval = span === undefined ? null : intervalCell(span);
  if (interval) return { layer: { how: 'interval', ...interval }, depths: [interval.from, interval.to] };
  const [fromCell] = cellsAt(row, map.from);
  const [toCell] = cellsAt(row, map.to);
  const [thickCell] = cellsAt(row, map.thickness);
  const read = [fromCell, toCell, thickCell, span].map((cell) => number(cell, reading));
  const [from = null, to = null, thick = null, single = null] = read;
  const unread = [fromCell, toCell, thickCell, span].some((cell, at) => cell !== undefined && read[at] === null);
  if (unread) return null;
  if (from && to) return { layer: { how: 'interval', from, to }, depths: [from, to] };
  if (to) return { layer: { how: 'to', from: null, to }, depths: [to] };
  if (thick) return { layer: { how: 'thick', from: null, to: thick }, depths: [thick] };
  if (from) return { layer: { how: 'top', from, to: null }, depths: [from] };
  if (single) return { layer: { how: 'single', from: null, to: single }, depths: [single] };
  return none;
}

function wordsOf(row: TableRow, { map, table }: Reading): { words: string; why: string[] } {
  const width = table.rows[table.header]?.cells.length ?? 0;
  const description = map.description ?? [];
  const beyond = width > 0 ? row.cells.slice(width).filter((cell) => cell !== '') : [];
  const isLast = description.includes(width - 1);
  const extra = isLast ? beyond : [];
  const words = [...cellsAt(row, description), ...extra, ...cellsAt(row, map.colour), ...cellsAt(row, map.detail)];
  const why =
    beyond.length === 0
      ? []
      : [
          isLast
            ? l10n.t('cells beyond the last column were joined to the description')
            : l10n.t('cells beyond the last column have no place'),
        ];
  return { words: words.map((word) => tidy(word)).join(', '), why };
}

function wellOf(row: TableRow, { map }: Reading, above: Above): { items: DraftItem[]; other: string | null } {
  const [name] = cellsAt(row, map.well);
  if (name === undefined || name === above.well) return { items: [], other: null };
  if (above.well !== null) return { items: [], other: name };
  above.well = name;
  return { items: [line('head', `well ${name.replace(/^#/, '').trim()}`)], other: null };
}

/** Water told in a column of its own: `5 gpm @ 22`, or a rate that belongs to the whole row. */
function waterIn(row: TableRow, { map, options }: Reading, { from, to }: Depths['layer']): Outcome {
  const [cell] = cellsAt(row, map.water);
  if (cell === undefined || /^(?:no|none|dry|-+)$/i.test(cell)) return nothing;
  if (!/\d/.test(cell)) return { ...nothing, why: [l10n.t('no place found for the water "{0}"', cell)] };
  return waterFound(statementOf(tidy(cell), options.dates), from && to && { from, to });
}

function rowOutcome(row: TableRow, reading: Reading, above: Above): Outcome {
  const { items, other } = wellOf(row, reading, above);
  if (other !== null) return { ...nothing, why: [l10n.t('a row of another well, "{0}"; one file is one well', other)] };
  const found = depthsOf(row, reading);
  const { words, why } = wordsOf(row, reading);
  if (found === null)
    return {
      ...nothing,
      items,
      why: [l10n.t('a depth of this row is no length; write it with a point, and its unit behind it')],
    };
  if (found.layer.how === 'none')
    return {
      ...nothing,
      items,
      why: [
        words === ''
          ? l10n.t('an empty row')
          : l10n.t('no depths; if the words belong to the row above, add them there'),
      ],
    };
  const [remark] = cellsAt(row, reading.map.remark);
  const water = waterIn(row, reading, found.layer);
  const layer: DraftLayer = {
    kind: 'layer',
    ...found.layer,
    words,
    remark: remark === undefined ? null : tidy(remark).replace(/[#;]/g, ','),
  };
  return both({ items: [...items, layer], why, depths: found.depths, openDate: null }, water);
}

const sourceOf = (row: TableRow, lines: readonly string[]): string[] => lines.slice(row.first - 1, row.last);

function rowDraft(row: TableRow, reading: Reading, above: Above): Draft[] {
  const { lines, options } = reading;
  const place = { first: row.first, last: row.last, source: sourceOf(row, lines) };
  if (row.cells.filter((cell) => cell !== '').length === 1 && Object.values(reading.map).flat().length > 1) {
    const [alone] = readPlain([place.source.join(' ')], row.first, options);
    return alone === undefined ? [] : [{ ...alone, ...place }];
  }
  return [{ ...rowOutcome(row, reading, above), ...place }];
}

function unitTold({ map, table }: Pick<Reading, 'map' | 'table'>): DepthUnit | null {
  const header = table.rows[table.header]?.cells ?? [];
  const columns = [map.from, map.to, map.interval, map.thickness].flatMap((each) => each ?? []);
  const units = new Set(columns.flatMap((column) => unitInName(header[column] ?? '') ?? []));
  return units.size === 1 ? ([...units][0] ?? null) : null;
}

/** Unused columns, told once for the whole table. */
function unusedTrouble({ map, table }: Pick<Reading, 'map' | 'table'>): Trouble[] {
  const header = table.rows[table.header];
  if (header === undefined) return [];
  const used = new Set(Object.values(map).flat());
  const unused = header.cells.filter((cell, at) => !used.has(at) && cell.trim() !== '');
  if (unused.length === 0) return [];
  return [
    {
      line: header.first,
      says: l10n.t('no place for {0}: kept in the comments alone', unused.map((each) => `"${each}"`).join(', ')),
    },
  ];
}

const commaTrouble = (reading: Reading): Trouble[] =>
  reading.comma
    ? [
        {
          line: reading.table.rows[0]?.first ?? 1,
          says: l10n.t('the depths of this table have a decimal comma; they were written with a point'),
        },
      ]
    : [];

/** Numbers such as `0,5` in a table that parts its cells otherwise, with no number such as `0.5` or `1,250` beside them. */
function hasDecimalComma(rows: readonly TableRow[], map: ColumnMap, delimiter: Delimiter): boolean {
  if (delimiter === ',') return false;
  const columns = [map.from, map.to, map.thickness].flatMap((each) => each ?? []);
  const cells = rows.flatMap((row) => columns.map((column) => row.cells[column] ?? ''));
  return cells.some((cell) => isDecimalComma(cell)) && !cells.some((cell) => /\d\.\d|\d,\d{3}/.test(cell));
}

/** A table as drafts, or the question that it raises: which column is what. */
export function readTable(table: Table, lines: readonly string[], options: ReadOptions): Drafted | Question {
  const header = table.rows[table.header];
  const body = table.rows.slice(table.header + 1).filter(({ cells }) => !isRule(cells));
  const cells = body.map((row) => row.cells);
  const width = cells.reduce((most, row) => Math.max(most, row.length), 0);
  const ask = (says: string, map: ColumnMap): Question => ({
    about: 'columns',
    line: header?.first ?? table.rows[0]?.first ?? 1,
    says,
    answers: isWhole(map) ? [mapText(map, header?.cells ?? null)] : [],
    blocking: true,
  });
  const named = header ? mapByName(header.cells) : {};
  let map: ColumnMap = named;
  if (options.columns !== null) {
    const read = readMap(options.columns, header?.cells ?? null, width);
    if ('says' in read) return ask(read.says as string, mapByContent(cells));
    map = read;
  } else if (
    !isCertain(
      named,
      cells.filter((row) => row.length > 1),
    )
  ) {
    return ask(l10n.t('which column is what is not certain from the header and the content'), mapByContent(cells));
  }
  const reading: Reading = { map, table, lines, options, comma: hasDecimalComma(body, map, table.delimiter) };
  const above: Above = { well: null };
  const headRows = table.rows.slice(0, table.header + 1);
  const heading = headRows.map((row, at): Draft => {
    const source = sourceOf(row, lines);
    const place = { first: row.first, last: row.last, source };
    if (at === table.header) return { ...nothing, ...place };
    return { ...(readPlain([source.join(' ')], row.first, options)[0] ?? nothing), ...place };
  });
  const rules = table.rows
    .slice(table.header + 1)
    .filter(({ cells: each }) => isRule(each))
    .map((row): Draft => ({ ...nothing, first: row.first, last: row.last, source: sourceOf(row, lines) }));
  const drafts = [...heading, ...rules, ...body.flatMap((row) => rowDraft(row, reading, above))];
  let told = unitTold(reading);
  for (const { source } of heading) told ??= tellsUnits(tidy(source.join(' ').slice(0, 200)));
  return {
    drafts,
    told,
    layers: null,
    troubles: [...table.troubles, ...unusedTrouble(reading), ...commaTrouble(reading)],
  };
}
