import { type DepthScale, yOf } from '../depth-scale.ts';
import type { Box, Part, Shape } from '../shapes.ts';
import type { WellGeometry } from './geometry.ts';

/** The well put on the page: depths by the scale, widths by a scale of their own about a centre line. */
export interface WellFrame {
  readonly well: WellGeometry;
  readonly scale: DepthScale;
  readonly unit: string;
  readonly box: Box;
  readonly centre: number;
  /** Millimetres on the page to a metre of width. */
  readonly mmAcross: number;
}

/* Room left for the ground beside the widest hole, in mm. */
const beside = 8;

export const wellFrame = (well: WellGeometry, scale: DepthScale, unit: string, box: Box): WellFrame => ({
  well,
  scale,
  unit,
  box,
  centre: box.x + box.width / 2,
  mmAcross: Math.max(box.width - 2 * beside, 4) / well.widest,
});

/** How many times larger widths are drawn than depths. */
export const exaggeration = ({ mmAcross, scale }: WellFrame): number => mmAcross / scale.mmPerMetre;

const rounded = (value: number): string => String(Number(value.toPrecision(2)));

/** The exaggeration of widths in words. */
export function exaggerationWords(frame: WellFrame): string {
  const times = exaggeration(frame);
  return times > 1 ? `widths drawn ${rounded(times)} times larger` : `widths drawn ${rounded(1 / times)} times smaller`;
}

export type Side = -1 | 1;

export const xAt = (frame: WellFrame, diameter: number, side: Side): number =>
  frame.centre + (side * diameter * frame.mmAcross) / 2;

export const yAt = (frame: WellFrame, depth: number): number => yOf(frame.scale, depth);

/** The same on the left and on the right. */
export const bothSides = (shapesOf: (side: Side) => readonly Shape[]): Shape[] => [...shapesOf(-1), ...shapesOf(1)];

export const part = (name: string, line: number | null, title: string, shapes: readonly Shape[]): Part => ({
  name,
  line,
  title,
  shapes,
});
