import type { Fill, WellLog } from '../../model/log.ts';
import type { FillRecord, Record as WellRecord } from '../../record/record.ts';
import type { Extent } from '../depth-window.ts';
import { type Part, rect, type Shape, type Style, stroked, tiled } from '../shapes.ts';
import { fillLook } from '../tiles/fill-tiles.ts';
import { capital, depthWithUnit, intervalWithUnit, listed, measureText, numberText, wordText } from '../words.ts';
import { bothSides, part, type Side, type WellFrame, xAt, yAt } from './frame.ts';
import { aroundAt, boreAt, type DrawnString, extentOf, pipeAt } from './geometry.ts';

interface Ring extends Extent {
  readonly inner: number;
  readonly outer: number;
}

const bagsText = (fill: Fill): string =>
  fill.bags === null
    ? measureText(fill.mass)
    : fill.bags.massEach === null
      ? measureText(fill.bags.count)
      : `${measureText(fill.bags.count)} of ${measureText(fill.bags.massEach)}`;

const gradingText = ({ grading }: Fill): string =>
  grading === null ? '' : `${numberText(grading.coarse, 0)}/${numberText(grading.fine, 0)}`;

const placeText = (fill: Fill, unit: string): string =>
  fill.interval === null
    ? fill.depth === null
      ? ''
      : depthWithUnit(fill.depth, unit)
    : intervalWithUnit(fill.interval, unit);

const nameOf = (fill: Fill): string => capital(fill.kind === 'abandonment' ? 'abandonment seal' : fill.kind);

/** A fill in words: kind, place, material, amount. */
export function fillTitle(fill: Fill, unit: string): string {
  const material = listed([gradingText(fill), wordText(fill.material)]).replace(', ', ' ') || 'material ?';
  return `${nameOf(fill)} ${placeText(fill, unit)}: ${listed([material, measureText(fill.volume), bagsText(fill)])}`;
}

const screenEnds = ({ well, scale }: WellFrame): number[] =>
  well.strings.flatMap(({ string }) =>
    string.screens.flatMap(({ interval }) => {
      const extent = extentOf(interval, scale.window);
      return extent === null ? [] : [extent.top, extent.bottom];
    }),
  );

/** Depths at which what bounds the annulus may change. */
function edgesWithin(frame: WellFrame, { top, bottom }: Extent): number[] {
  const ends = [
    ...[...frame.well.hole, ...frame.well.strings].flatMap((each) => [each.top, each.bottom]),
    ...screenEnds(frame),
  ];
  const inside = ends.filter((depth) => depth > top && depth < bottom);
  return [...new Set([top, ...inside, bottom])].sort((a, b) => a - b);
}

function drawnRings(frame: WellFrame, string: DrawnString, extent: Extent): Ring[] {
  const edges = edgesWithin(frame, extent);
  return edges.slice(1).map((bottom, n) => {
    const top = edges[n] ?? extent.top;
    const middle = (top + bottom) / 2;
    return { top, bottom, inner: pipeAt(string, middle), outer: aroundAt(frame.well, string, middle) };
  });
}

const isSound = ({ top, bottom, inner, outer }: Ring): boolean =>
  [top, bottom, inner, outer].every(Number.isFinite) && inner >= 0 && outer > inner && bottom > top;

function clipped(frame: WellFrame, ring: Ring): Ring {
  const { window } = frame.scale;
  return {
    top: Math.max(ring.top, window.top),
    bottom: Math.min(ring.bottom, window.bottom),
    inner: Math.min(ring.inner, frame.well.widest),
    outer: Math.min(ring.outer, frame.well.widest),
  };
}

/** The annulus that the record reckoned with; where it could not, the one that is drawn. */
function ringsOf(frame: WellFrame, string: DrawnString, fill: Fill, known: FillRecord | undefined): Ring[] {
  const extent = extentOf(fill.interval, frame.scale.window);
  if (extent === null) return [];
  const reckoned: readonly Ring[] = known?.pieces ?? [];
  const isWhole = reckoned.length > 0 && known?.unknown.length === 0;
  return (isWhole ? reckoned : drawnRings(frame, string, extent)).map((ring) => clipped(frame, ring)).filter(isSound);
}

function band(frame: WellFrame, ring: Ring, side: Side, style: Style): Shape {
  const [a, b] = [xAt(frame, ring.inner, side), xAt(frame, ring.outer, side)];
  const top = yAt(frame, ring.top);
  return rect(Math.min(a, b), top, Math.abs(b - a), yAt(frame, ring.bottom) - top, style);
}

const edge: Style = stroked('ink', 0.12);

/* Below the foot of the pipe the fill closes over the middle. */
function ringShapes(frame: WellFrame, ring: Ring, tile: string): Shape[] {
  const style = { ...tiled(tile), stroke: edge.stroke, width: edge.width };
  if (ring.inner > 0) return bothSides((side) => [band(frame, ring, side, style)]);
  const left = xAt(frame, ring.outer, -1);
  const top = yAt(frame, ring.top);
  return [rect(left, top, 2 * (frame.centre - left), yAt(frame, ring.bottom) - top, style)];
}

function annularPart(frame: WellFrame, record: WellRecord, string: DrawnString, fill: Fill): Part[] {
  const isThis = (each: FillRecord) =>
    each.string === string.string.number && each.kind === fill.kind && each.number === fill.number;
  const rings = ringsOf(frame, string, fill, record.fills.find(isThis));
  const { tile } = fillLook(fill.fillClass);
  const shapes = rings.flatMap((ring) => ringShapes(frame, ring, tile.id));
  return shapes.length === 0 ? [] : [part(fill.kind, fill.line, fillTitle(fill, frame.unit), shapes)];
}

const isAnnular = (fill: Fill): boolean => fill.kind !== 'plug';

/** Grout, seals and packs around the strings. */
export const annularParts = (frame: WellFrame, record: WellRecord): Part[] =>
  frame.well.strings.flatMap((string) =>
    string.string.fills.filter(isAnnular).flatMap((fill) => annularPart(frame, record, string, fill)),
  );

/* A plug given by one depth is drawn this thick, in mm. */
const plugThickness = 1.6;

function plugShapes(frame: WellFrame, fill: Fill): Shape[] {
  const { tile } = fillLook(fill.fillClass);
  const style: Style = { ...tiled(tile.id), stroke: 'ink', width: 0.2 };
  const extent = extentOf(fill.interval, frame.scale.window);
  const depth = fill.depth?.value ?? null;
  if (extent !== null) return boreRects(frame, extent, style);
  if (depth === null || !Number.isFinite(depth) || depth > frame.scale.window.bottom || depth < frame.scale.window.top)
    return [];
  const width = boreAt(frame.well, depth) * frame.mmAcross;
  return [rect(frame.centre - width / 2, yAt(frame, depth) - plugThickness, width, plugThickness, style)];
}

function boreRects(frame: WellFrame, extent: Extent, style: Style): Shape[] {
  const edges = edgesWithin(frame, extent);
  return edges.slice(1).map((bottom, n) => {
    const top = edges[n] ?? extent.top;
    const width = boreAt(frame.well, (top + bottom) / 2) * frame.mmAcross;
    return rect(frame.centre - width / 2, yAt(frame, top), width, yAt(frame, bottom) - yAt(frame, top), style);
  });
}

const boreParts = (frame: WellFrame, fills: readonly Fill[]): Part[] =>
  fills.flatMap((fill) => {
    const shapes = plugShapes(frame, fill);
    return shapes.length === 0 ? [] : [part(fill.kind, fill.line, fillTitle(fill, frame.unit), shapes)];
  });

/** Plugs in the strings, and what an abandoned hole was sealed with. */
export const plugParts = (frame: WellFrame, log: WellLog): Part[] => [
  ...frame.well.strings.flatMap(({ string }) =>
    boreParts(
      frame,
      string.fills.filter((fill) => !isAnnular(fill)),
    ),
  ),
  ...log.abandonments.flatMap((abandonment) => boreParts(frame, abandonment.fills)),
];
