import type { Record as WellRecord } from '../record/record.ts';
import { depthColumn, elevationColumn } from './columns/axes.ts';
import type { Column, ColumnId } from './columns/column.ts';
import { descriptionColumn } from './columns/description.ts';
import { lithologyColumn } from './columns/lithology.ts';
import { notesColumn } from './columns/notes.ts';
import { wellColumn } from './columns/well.ts';
import { bottomY, type DepthScale, depthScale, yOf } from './depth-scale.ts';
import { type FootNote, footNotes } from './foot-notes.ts';
import { type Label, labelsHeight, placeLabels } from './labels.ts';
import { legendPart, tilesOf } from './legend.ts';
import { type Box, line, type Part, type Shape, stroked, type Tile } from './shapes.ts';
import { type Sheet, sheetOf } from './sheet.ts';
import { fitted, rowHeight, textRow, types, wrapped } from './text.ts';
import { titleHeight, titlePart, wellName } from './title.ts';
import { type WellFrame, wellFrame } from './well/frame.ts';

/** What a drawing shows, and how wide it is. */
export interface DrawOptions {
  /** The columns, in this order; null for all. */
  readonly columns: readonly ColumnId[] | null;
  /** Width of the sheet in mm. */
  readonly widthMm: number;
  /** True for a title block over the columns. */
  readonly title: boolean;
}

export const defaultDrawOptions: DrawOptions = { columns: null, widthMm: 180, title: true };

/** A drawing laid out in mm: everything that is on the page, with its place. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  readonly description: string;
  readonly scale: DepthScale;
  readonly tiles: readonly Tile[];
  /** In the order in which they are painted. */
  readonly parts: readonly Part[];
}

const allColumns: readonly Column[] = [
  depthColumn,
  elevationColumn,
  lithologyColumn,
  descriptionColumn,
  wellColumn,
  notesColumn,
];

/** Every column there is, in the order of a whole drawing. */
export const columnIds: readonly ColumnId[] = allColumns.map((column) => column.id);

/* An A4 sheet with its margins leaves this much for the columns between title and legend, in mm. */
const leastBody = 138;
const headHeight = 8.4;
const margin = 2;
const padding = 4;
const leastWidth = 60;
const mostWidth = 2000;

/** Where the columns stand on the page, and the well in them. */
interface Page {
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly frame: WellFrame | null;
}

interface Track {
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

function tracksOf(sheet: Sheet, columns: readonly Column[], width: number): Track[] {
  let x = margin;
  return columnWidths(columns, width).flatMap((each, n) => {
    const column = columns[n];
    if (column === undefined) return [];
    const track = { column, x, width: each, labels: column.labels(sheet, each) };
    x += each;
    return [track];
  });
}

const boxOf = (track: Track, scale: DepthScale): Box => ({
  x: track.x,
  y: scale.top - padding,
  width: track.width,
  height: bottomY(scale) - scale.top + 2 * padding,
});

const frameStyle = stroked('ink', 0.3);
const columnStyle = stroked('rule', 0.2);

function headingShapes(sheet: Sheet, { column, x, width }: Track, top: number, frame: WellFrame | null): Shape[] {
  const room = width - 2;
  const under = fitted(column.subheading(sheet, frame), types.small, room);
  return [
    textRow(fitted(column.heading(sheet), types.head, room), x + 1, top + 1, types.head),
    ...(under === '' ? [] : [textRow(under, x + 1, top + 1 + rowHeight(types.head) + 0.4, types.small)]),
  ];
}

function framePart(sheet: Sheet, tracks: readonly Track[], page: Page): Part {
  const { top, bottom, width, frame } = page;
  const between = tracks.slice(1).map(({ x }) =>
    line(
      [
        [x, top],
        [x, bottom],
      ],
      columnStyle,
    ),
  );
  const across = [top + headHeight, bottom].map((y) =>
    line(
      [
        [margin, y],
        [margin + width, y],
      ],
      frameStyle,
    ),
  );
  const headings = tracks.flatMap((track) => headingShapes(sheet, track, top, frame));
  return { name: 'frame', line: null, title: 'Columns', shapes: [...between, ...across, ...headings] };
}

function footParts(notes: readonly FootNote[], top: number, width: number): { parts: Part[]; height: number } {
  let y = top;
  const parts = notes.map(({ line: at, text }) => {
    const rows = wrapped(text, types.small, width, 3);
    const shapes = rows.map((row, n) => textRow(row, margin, y + n * rowHeight(types.small), types.small));
    y += rows.length * rowHeight(types.small) + 0.3;
    return { name: 'foot-note', line: at, title: text, shapes };
  });
  return { parts, height: y - top };
}

function trackParts(sheet: Sheet, track: Track, scale: DepthScale, frame: WellFrame | null): Part[] {
  const box = boxOf(track, scale);
  const labels = placeLabels(track.labels, (depth) => yOf(scale, depth), box.y, box.y + box.height, track.column.rise);
  const lithology = track.column.id === 'lithology' ? { ...box, x: box.x + 2, width: box.width - 4 } : box;
  return track.column.parts(sheet, { scale, box: lithology, labels, frame });
}

const clampedWidth = (width: number): number =>
  Number.isFinite(width) ? Math.min(Math.max(width, leastWidth), mostWidth) : defaultDrawOptions.widthMm;

/** Below the columns: the legend, and the notes at the foot. */
function below(sheet: Sheet, scale: DepthScale, { bottom, width, frame }: Page): { parts: Part[]; height: number } {
  const top = bottom + 3;
  const legend = legendPart(sheet, margin, top, width);
  const foot = footParts(footNotes(sheet, scale, frame), top + legend.height + 1, width);
  return { parts: [legend.part, ...foot.parts], height: 3 + legend.height + 1 + foot.height };
}

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

const describe = ({ log }: Sheet): string =>
  `Drawing to scale: ${count(log.strata.length, 'layer', 'layers')}, ${count(log.strings.length, 'string', 'strings')}, ${count(log.water.found.length, 'water found', 'waters found')}.`;

/** The scale at which every label of every column finds room. */
function scaleFor(sheet: Sheet, tracks: readonly Track[], headTop: number): DepthScale {
  const needed = tracks.reduce((most, track) => Math.max(most, labelsHeight(track.labels)), leastBody);
  return depthScale(sheet.window, headTop + headHeight + padding, needed, sheet.unit);
}

function wellFrameIn(sheet: Sheet, tracks: readonly Track[], scale: DepthScale): WellFrame | null {
  const track = tracks.find(({ column }) => column.id === 'well');
  return track ? wellFrame(sheet.well, scale, sheet.unit, boxOf(track, scale)) : null;
}

/**
 * Lays out the log of a well to scale. Depths are linear in `scale`; the body grows until every description and note
 * finds room without lying over another.
 */
export function drawWell(record: WellRecord, options: Partial<DrawOptions> = {}): Drawing {
  const { columns, widthMm, title } = { ...defaultDrawOptions, ...options };
  const sheet = sheetOf(record);
  const width = clampedWidth(widthMm) - 2 * margin;
  const tracks = tracksOf(sheet, chosenColumns(sheet, columns), width);
  const top = margin + (title ? titleHeight(sheet) : 0);
  const scale = scaleFor(sheet, tracks, top);
  const page: Page = { top, bottom: bottomY(scale) + padding, width, frame: wellFrameIn(sheet, tracks, scale) };
  const rest = below(sheet, scale, page);
  return {
    widthMm: width + 2 * margin,
    heightMm: page.bottom + rest.height + margin,
    title: `Log of ${wellName(sheet.log.header)}`,
    description: describe(sheet),
    scale,
    tiles: tilesOf(sheet),
    parts: [
      ...(title ? [titlePart(sheet, { x: margin, y: margin, width, height: top - margin })] : []),
      ...tracks.flatMap((track) => trackParts(sheet, track, scale, page.frame)),
      framePart(sheet, tracks, page),
      ...rest.parts,
    ],
  };
}
