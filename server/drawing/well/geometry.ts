import type { Depth, Interval, PipeString, WellLog } from '../../model/log.ts';
import type { DepthWindow, Extent } from '../depth-window.ts';

/** A stretch of hole of one diameter, in metres. */
export interface HoleStretch extends Extent {
  readonly line: number;
  readonly diameter: number;
  /** False where the notes do not say how wide it is: the diameter is then only how it is drawn. */
  readonly known: boolean;
  /** True where the hole goes on below what is shown. */
  readonly continues: boolean;
}

/** A string with what is needed to draw it, in metres. */
export interface DrawnString extends Extent {
  readonly string: PipeString;
  /** Its ends, whether they are shown or not. */
  readonly head: number;
  readonly foot: number;
  readonly outer: number;
  readonly inner: number;
  readonly sizeKnown: boolean;
}

/** The well in metres, before it is put on the page. */
export interface WellGeometry {
  readonly hole: readonly HoleStretch[];
  /** The widest first, so that what stands inside is drawn over what stands outside. */
  readonly strings: readonly DrawnString[];
  /** The greatest width drawn. */
  readonly widest: number;
  /** A diameter of the notes that no well has, in metres; null where there is none. */
  readonly unsound: number | null;
}

/* A dug well may be 3 m across, and no pipe is thinner than a finger: beyond, it is a slip of the unit. */
const widestDrawn = 5;
const narrowestDrawn = 0.01;
/* A hole has a handful of diameters and strings; of a list beyond all reason the first are drawn. */
export const mostDrawn = 200;
const assumedHole = 0.2;
const assumedWall = 0.006;

const positive = (value: number | null | undefined): value is number =>
  value != null && Number.isFinite(value) && value > 0;
const finite = (depth: Depth | null | undefined): number | null =>
  depth?.value != null && Number.isFinite(depth.value) ? depth.value : null;

const isSound = (width: number | null | undefined): width is number =>
  positive(width) && width >= narrowestDrawn && width <= widestDrawn;

/** A width that can be drawn; null for an unknown one, and for what no well has. */
const drawable = (width: number | null | undefined): number | null => (isSound(width) ? width : null);

interface Bored extends Extent {
  readonly line: number;
  readonly diameter: number | null;
}

/** The interval in order and within the window; null where an end is unknown or nothing of it is shown. */
export function extentOf(interval: Interval | null, window: DepthWindow): Extent | null {
  const [a, b] = [finite(interval?.top), finite(interval?.bottom)];
  if (a === null || b === null) return null;
  const top = Math.max(Math.min(a, b), window.top);
  const bottom = Math.min(Math.max(a, b), window.bottom);
  return top < bottom ? { top, bottom } : null;
}

function boredOf(log: WellLog, window: DepthWindow): Bored[] {
  return [...log.existing, ...log.hole].slice(0, mostDrawn).flatMap(({ line, interval, diameter }) => {
    const extent = extentOf(interval, window);
    return extent === null ? [] : [{ line, ...extent, diameter: drawable(diameter?.value) }];
  });
}

const widestOf = (sizes: readonly (number | null)[], otherwise: number): number =>
  sizes.reduce<number>((most, size) => Math.max(most, size ?? 0), 0) || otherwise;

/** The hole as it stands at the end: at each depth the widest that was bored there. */
function holeStretches(bored: readonly Bored[], otherwise: number): HoleStretch[] {
  const edges = [...new Set(bored.flatMap(({ top, bottom }) => [top, bottom]))].sort((a, b) => a - b);
  const stretches: HoleStretch[] = [];
  for (const [n, top] of edges.entries()) {
    const bottom = edges[n + 1];
    const here = bottom === undefined ? [] : bored.filter((each) => each.top <= top && each.bottom >= bottom);
    if (bottom === undefined || here.length === 0) continue;
    const winner = here.reduce((best, each) => ((each.diameter ?? 0) > (best.diameter ?? 0) ? each : best));
    stretches.push({
      top,
      bottom,
      line: winner.line,
      diameter: winner.diameter ?? otherwise,
      known: winner.diameter !== null,
      continues: false,
    });
  }
  return joined(stretches);
}

function joined(stretches: readonly HoleStretch[]): HoleStretch[] {
  const kept: HoleStretch[] = [];
  for (const stretch of stretches) {
    const last = kept.at(-1);
    if (last && last.line === stretch.line && last.bottom === stretch.top)
      kept[kept.length - 1] = { ...last, bottom: stretch.bottom };
    else kept.push(stretch);
  }
  return kept;
}

const firstKnown = (...depths: readonly (Depth | null | undefined)[]): Depth | null =>
  depths.find((depth) => finite(depth) !== null) ?? null;

/** Where the string's top stands at the end: as set, or where it was cut; null where that is not known. */
export const topDepth = ({ cuts, interval }: PipeString): Depth | null => firstKnown(cuts.at(-1)?.to, interval.top);

/** Where the string's foot stands; null where that is not known. */
export const footDepth = ({ interval, shoe }: PipeString): Depth | null => firstKnown(interval.bottom, shoe?.depth);

/** What is shown of the hole. */
const holeShown = (stretches: readonly HoleStretch[], shown: DepthWindow): HoleStretch[] =>
  stretches
    .filter(({ top, bottom }) => top < shown.bottom && bottom > shown.top)
    .map((stretch) => ({
      ...stretch,
      top: Math.max(stretch.top, shown.top),
      bottom: Math.min(stretch.bottom, shown.bottom),
      continues: stretch.bottom > shown.bottom,
    }));

function drawnString(string: PipeString, window: DepthWindow, shown: DepthWindow, holeWidth: number): DrawnString[] {
  const [top, foot] = [finite(topDepth(string)), finite(footDepth(string))];
  const bottom = foot ?? (top === null ? null : window.bottom);
  if (bottom === null) return [];
  const head = Math.max(Math.min(top ?? 0, bottom), window.top);
  const low = Math.min(Math.max(top ?? 0, bottom), window.bottom);
  const size = pipeWidths(string, holeWidth);
  return [
    {
      string,
      ...size,
      head,
      foot: low,
      top: Math.max(head, shown.top),
      bottom: Math.min(low, shown.bottom),
    },
  ];
}

function pipeWidths({ size }: PipeString, holeWidth: number): Pick<DrawnString, 'outer' | 'inner' | 'sizeKnown'> {
  const known = drawable(size.outsideDiameter);
  const outer = known ?? holeWidth * 0.6;
  const wall = positive(size.wallThickness) ? size.wallThickness : assumedWall;
  return { outer, inner: Math.max(outer - 2 * wall, outer * 0.5), sizeKnown: known !== null };
}

function unsoundDiameter(log: WellLog): number | null {
  const bored = [...log.existing, ...log.hole].map(({ diameter }) => diameter?.value ?? null);
  const pipes = log.strings.map(({ size }) => size.outsideDiameter);
  return [...bored, ...pipes].find((each) => each !== null && !isSound(each)) ?? null;
}

/** The hole and the strings of a log, in metres, as wide as in the whole window and cut to what is shown of it. */
export function wellGeometry(log: WellLog, window: DepthWindow, shown: DepthWindow): WellGeometry {
  const bored = boredOf(log, window);
  const outsides = log.strings.map(({ size }) => drawable(size.outsideDiameter));
  const pipe = widestOf(outsides, 0);
  const otherwise = Math.min(
    widestOf(
      bored.map((each) => each.diameter),
      Math.max(pipe * 1.4, assumedHole),
    ),
    widestDrawn,
  );
  const strings = log.strings.slice(0, mostDrawn).flatMap((string) => drawnString(string, window, shown, otherwise));
  return {
    hole: holeShown(holeStretches(bored, otherwise), shown),
    strings: strings.filter((each) => each.top < each.bottom).sort((a, b) => b.outer - a.outer),
    widest: strings.reduce((most, each) => Math.max(most, each.outer), otherwise),
    unsound: unsoundDiameter(log),
  };
}

/** Width of the hole at a depth, in metres; null where there is none. */
export const holeAt = (well: WellGeometry, depth: number): HoleStretch | null =>
  well.hole.find((stretch) => stretch.top <= depth && depth <= stretch.bottom) ?? null;

/** Width of a string, or of its screen, at a depth; 0 below its foot. */
export function pipeAt(drawn: DrawnString, depth: number): number {
  if (drawn.top <= depth && depth <= drawn.bottom) return drawn.outer;
  const screen = drawn.string.screens.find(({ interval }) => {
    const [top, bottom] = [finite(interval.top), finite(interval.bottom)];
    return top !== null && bottom !== null && top <= depth && depth <= bottom;
  });
  if (screen === undefined) return 0;
  return drawable(screen.size.outsideDiameter) ?? drawn.outer;
}

/** Width of what stands around a string at a depth: the next string out, or else the hole. */
export function aroundAt(well: WellGeometry, inner: DrawnString, depth: number): number {
  const outer = well.strings.filter(
    (each) =>
      each !== inner && each.inner > inner.outer && each.top <= depth && depth <= each.bottom && !each.string.temporary,
  );
  const nearest = outer.reduce((least, each) => Math.min(least, each.inner), Number.POSITIVE_INFINITY);
  return Number.isFinite(nearest) ? nearest : Math.max(holeAt(well, depth)?.diameter ?? well.widest, inner.outer);
}

/** Width of the open bore at a depth: inside of the narrowest string there, or the hole. */
export function boreAt(well: WellGeometry, depth: number): number {
  const inside = well.strings.filter((each) => each.top <= depth && depth <= each.bottom && !each.string.temporary);
  const narrowest = inside.reduce((least, each) => Math.min(least, each.inner), Number.POSITIVE_INFINITY);
  return Number.isFinite(narrowest) ? narrowest : (holeAt(well, depth)?.diameter ?? well.widest);
}
