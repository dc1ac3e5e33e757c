import type { DepthScale } from './depth-scale.ts';
import { yOf } from './depth-scale.ts';
import { footNotes } from './foot-notes.ts';
import { footParts } from './foot-parts.ts';
import { placeLabels } from './labels.ts';
import { legendPart } from './legend.ts';
import { type Box, line, type Part, type Shape, stroked } from './shapes.ts';
import type { Sheet } from './sheet.ts';
import { fitted, rowHeight, textRow, types } from './text.ts';
import type { Track } from './tracks.ts';
import { type WellFrame, wellFrame } from './well/frame.ts';

/** Height of the row of headings over the columns, in mm. */
export const headHeight = 8.4;
/** Room above the first and below the last depth, in mm. */
export const padding = 4;

/** Where things stand on one sheet. */
export interface Plan {
  /** What the sheet shows. */
  readonly sheet: Sheet;
  /** What all sheets show together: the legend and the notes at the foot speak of that. */
  readonly whole: Sheet;
  readonly tracks: readonly Track[];
  readonly scale: DepthScale;
  readonly left: number;
  readonly width: number;
  /** Top of the headings, and foot of the columns. */
  readonly top: number;
  readonly bottom: number;
}

const bodyOf = ({ top, bottom }: Plan, { x, width }: Pick<Track, 'x' | 'width'>): Box => ({
  x,
  y: top + headHeight,
  width,
  height: bottom - top - headHeight,
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

function framePart(plan: Plan, frame: WellFrame | null): Part {
  const { top, bottom, left, width, tracks } = plan;
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
        [left, y],
        [left + width, y],
      ],
      frameStyle,
    ),
  );
  const headings = tracks.flatMap((track) => headingShapes(plan.sheet, track, top, frame));
  return { name: 'frame', line: null, title: 'Columns', shapes: [...between, ...across, ...headings] };
}

/* The pattern stands a little in from the lines of its column. */
const lithologyInset = 2;

function trackParts(plan: Plan, track: Track, frame: WellFrame | null): Part[] {
  const { scale, sheet } = plan;
  const box = bodyOf(plan, track);
  const labels = placeLabels(track.labels, (depth) => yOf(scale, depth), box.y, box.y + box.height, track.column.rise);
  const isLithology = track.column.id === 'lithology';
  const inset = isLithology ? { ...box, x: box.x + lithologyInset, width: box.width - 2 * lithologyInset } : box;
  return track.column.parts(sheet, { scale, box: inset, labels, frame });
}

const legendGap = 3;

/** Below the columns: the legend, and the notes at the foot. */
function below(plan: Plan, frame: WellFrame | null): { parts: Part[]; height: number } {
  const { whole, left, width, scale } = plan;
  const top = plan.bottom + legendGap;
  const legend = legendPart(whole, left, top, width);
  const foot = footParts(footNotes(whole, scale, frame), left, top + legend.height + 1, width);
  return { parts: [legend.part, ...foot.parts], height: legendGap + legend.height + 1 + foot.height };
}

function frameIn(plan: Plan): WellFrame | null {
  const { sheet, scale, tracks } = plan;
  const track = tracks.find(({ column }) => column.id === 'well');
  return track ? wellFrame(sheet.well, scale, sheet.unit, bodyOf(plan, track)) : null;
}

/** Height in mm of what stands below the columns. */
export const heightBelow = (plan: Plan): number => below(plan, frameIn(plan)).height;

/** The columns, their headings, and what stands below them. */
export function sheetParts(plan: Plan): { parts: Part[]; foot: number } {
  const frame = frameIn(plan);
  const rest = below(plan, frame);
  return {
    parts: [...plan.tracks.flatMap((track) => trackParts(plan, track, frame)), framePart(plan, frame), ...rest.parts],
    foot: plan.bottom + rest.height,
  };
}
