/** The colours of a drawing, by what they are for. The editor sets them by theme; `paints` has those of print. */
export type Paint =
  | 'ink'
  | 'paper'
  | 'quiet-ink'
  | 'rule'
  | 'water'
  | 'doubt'
  | 'plot-2'
  | 'plot-3'
  | 'ground-soil'
  | 'ground-fine'
  | 'ground-coarse'
  | 'ground-mixed'
  | 'ground-organic'
  | 'ground-fill'
  | 'ground-sedimentary'
  | 'ground-carbonate'
  | 'ground-crystalline'
  | 'ground-volcanic'
  | 'ground-rock'
  | 'coal'
  | 'coal-mark'
  | 'fill-cement'
  | 'fill-bentonite'
  | 'fill-granular';

/** How a shape is filled and stroked. Widths and dashes are in mm; `tile` is the id of a pattern laid over the fill. */
export interface Style {
  readonly fill: Paint | null;
  readonly fillOpacity: number;
  readonly tile: string | null;
  readonly stroke: Paint | null;
  readonly width: number;
  readonly dash: readonly number[] | null;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

export interface RectShape extends Box {
  readonly kind: 'rect';
  readonly style: Style;
}

export interface PathShape {
  readonly kind: 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly style: Style;
}

export interface EllipseShape extends Point {
  readonly kind: 'ellipse';
  readonly rx: number;
  readonly ry: number;
  readonly style: Style;
}

/** One row of text; `y` is its baseline, `size` its font size, `width` its measured width, all in mm. */
export interface TextShape extends Point {
  readonly kind: 'text';
  readonly text: string;
  readonly size: number;
  readonly width: number;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly paint: Paint;
}

/** What a drawing is made of; positions and lengths in mm, y downward. */
export type Shape = RectShape | PathShape | EllipseShape | TextShape;

/** One drawn thing: the shapes that show it, the line it comes from (from 0), and what it is in words. */
export interface Part {
  /** Class without its `dh-`, such as `layer`. */
  readonly name: string;
  readonly line: number | null;
  readonly title: string;
  readonly shapes: readonly Shape[];
}

/** A pattern that repeats: its shapes lie within `width` by `height` mm. */
export interface Tile {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly tint: Paint | null;
  readonly shapes: readonly Shape[];
}

const plain: Style = { fill: null, fillOpacity: 1, tile: null, stroke: null, width: 0, dash: null };

export const stroked = (stroke: Paint, width: number, dash: readonly number[] | null = null): Style => ({
  ...plain,
  stroke,
  width,
  dash,
});

export const filled = (fill: Paint, fillOpacity = 1): Style => ({ ...plain, fill, fillOpacity });

export const tiled = (tile: string): Style => ({ ...plain, tile });

export const outlined = (fill: Paint, stroke: Paint, width: number): Style => ({ ...plain, fill, stroke, width });

export const rect = (x: number, y: number, width: number, height: number, style: Style): RectShape => ({
  kind: 'rect',
  x,
  y,
  width,
  height,
  style,
});

/** Points as pairs: `[[x, y], [x, y]]`. */
export type Pairs = readonly (readonly [number, number])[];

const path = (pairs: Pairs, closed: boolean, style: Style): PathShape => ({
  kind: 'path',
  points: pairs.map(([x, y]) => ({ x, y })),
  closed,
  style,
});

export const line = (pairs: Pairs, style: Style): PathShape => path(pairs, false, style);
export const polygon = (pairs: Pairs, style: Style): PathShape => path(pairs, true, style);

export const ellipse = (x: number, y: number, rx: number, ry: number, style: Style): EllipseShape => ({
  kind: 'ellipse',
  x,
  y,
  rx,
  ry,
  style,
});
