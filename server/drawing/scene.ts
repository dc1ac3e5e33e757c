import type { Record as WellRecord } from '../record/record.ts';
import { headHeight, type Plan, padding, sheetParts } from './compose.ts';
import { bottomY, type DepthScale, depthScale, givenScale } from './depth-scale.ts';
import { labelsHeight } from './labels.ts';
import { tilesOf } from './legend.ts';
import { type DrawingOptions, defaultDrawingOptions } from './options.ts';
import type { Part, Tile } from './shapes.ts';
import { type Sheet, sheetOf } from './sheet.ts';
import { titleHeight, titlePart, wellName } from './title.ts';
import { type Track, tracksOf } from './tracks.ts';

/** Something drawn, laid out in mm: everything that is on the page, with its place. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  readonly description: string;
  readonly tiles: readonly Tile[];
  /** In the order in which they are painted. */
  readonly parts: readonly Part[];
}

/** The log of a well, or a page of it. */
export interface WellDrawing extends Drawing {
  readonly scale: DepthScale;
}

/* An A4 sheet with its margins leaves this much for the columns between title and legend, in mm. */
const leastBody = 138;
const margin = 2;
const leastWidth = 60;
const mostWidth = 2000;

const clampedWidth = (width: number): number =>
  Number.isFinite(width) ? Math.min(Math.max(width, leastWidth), mostWidth) : defaultDrawingOptions.widthMm;

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

/** What a sheet holds, in words. */
export const describeSheet = ({ log }: Sheet): string =>
  `Drawing to scale: ${count(log.strata.length, 'layer', 'layers')}, ${count(log.strings.length, 'string', 'strings')}, ${count(log.water.found.length, 'water found', 'waters found')}.`;

export const drawingTitle = ({ log }: Sheet): string => `Log of ${wellName(log.header)}`;

/** Height that the words of the fullest column need, in mm. */
export const neededHeight = (tracks: readonly Track[]): number =>
  tracks.reduce((most, track) => Math.max(most, labelsHeight(track.labels)), 0);

/** The scale asked for, or one that suits; a larger one where the words would find no room. */
function scaleFor(sheet: Sheet, tracks: readonly Track[], top: number, wanted: number | null): DepthScale {
  const first = top + headHeight + padding;
  const needed = neededHeight(tracks);
  const asked = wanted === null ? null : givenScale(sheet.window, first, wanted);
  return asked !== null && bottomY(asked) - first >= needed
    ? asked
    : depthScale(sheet.window, first, wanted === null ? Math.max(needed, leastBody) : needed, sheet.unit);
}

/**
 * Lays out the log of a well on one sheet, as long as it needs. Depths are linear in `scale`; the body grows until every
 * description and note finds room without lying over another.
 */
export function drawWell(record: WellRecord, options: Partial<DrawingOptions> = {}): WellDrawing {
  const { columns, widthMm, title, scale: wanted } = { ...defaultDrawingOptions, ...options };
  const sheet = sheetOf(record);
  const width = clampedWidth(widthMm) - 2 * margin;
  const tracks = tracksOf(sheet, columns, margin, width);
  const top = margin + (title ? titleHeight(sheet) : 0);
  const scale = scaleFor(sheet, tracks, top, wanted);
  const plan: Plan = {
    sheet,
    whole: sheet,
    tracks,
    scale,
    left: margin,
    width,
    top,
    bottom: bottomY(scale) + padding,
  };
  const { parts, foot } = sheetParts(plan);
  const head = title ? [titlePart(sheet, { x: margin, y: margin, width, height: top - margin })] : [];
  return {
    widthMm: width + 2 * margin,
    heightMm: foot + margin,
    title: drawingTitle(sheet),
    description: describeSheet(sheet),
    scale,
    tiles: tilesOf(sheet),
    parts: [...head, ...parts],
  };
}
