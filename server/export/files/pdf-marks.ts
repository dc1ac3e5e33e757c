import { paintValue } from '../../drawing/paints.ts';
import type { EllipseShape, Paint, PathShape, RectShape, Shape, Style, TextShape } from '../../drawing/shapes.ts';
import { lean } from './lean.ts';

/** What a content stream calls its fonts, patterns and transparencies by; it is asked for each as it is used. */
export interface PageNames {
  /** A row of text as the bytes of its font, with the font's name and the width in mm at that size. */
  readonly set: (text: string, bold: boolean, size: number) => { font: string; bytes: string; width: number };
  readonly tile: (id: string) => string;
  readonly opacity: (opacity: number) => string;
}

/** A number of a content stream: never an exponent, and 0 for what is no number. */
export const number = (value: number): string => (Number.isFinite(value) ? String(Number(value.toFixed(3)) || 0) : '0');

const numbers = (...values: readonly number[]): string => values.map(number).join(' ');

function colour(paint: Paint): string {
  const value = Number.parseInt(paintValue(paint, 'print').slice(1), 16);
  return numbers(((value >> 16) & 255) / 255, ((value >> 8) & 255) / 255, (value & 255) / 255);
}

/* Four Bézier curves stand for an ellipse when their handles are this share of its half axes (4/3 (sqrt 2 - 1)). */
const handle = (4 / 3) * (Math.SQRT2 - 1);

function ellipsePath({ x, y, rx, ry }: EllipseShape): string {
  const [across, down] = [rx * handle, ry * handle];
  return [
    `${numbers(x + rx, y)} m`,
    `${numbers(x + rx, y + down, x + across, y + ry, x, y + ry)} c`,
    `${numbers(x - across, y + ry, x - rx, y + down, x - rx, y)} c`,
    `${numbers(x - rx, y - down, x - across, y - ry, x, y - ry)} c`,
    `${numbers(x + across, y - ry, x + rx, y - down, x + rx, y)} c h`,
  ].join(' ');
}

const linePath = ({ points, closed }: PathShape): string =>
  points.map(({ x, y }, n) => `${numbers(x, y)} ${n === 0 ? 'm' : 'l'}`).join(' ') + (closed ? ' h' : '');

const rectPath = ({ x, y, width, height }: RectShape): string =>
  `${numbers(x, y, Math.max(width, 0), Math.max(height, 0))} re`;

function pathOf(shape: Exclude<Shape, TextShape>): string {
  if (shape.kind === 'rect') return rectPath(shape);
  return shape.kind === 'path' ? linePath(shape) : ellipsePath(shape);
}

function fillSetting({ fill, fillOpacity, tile }: Style, names: PageNames): string[] {
  if (tile !== null) return [`/Pattern cs /${names.tile(tile)} scn`];
  if (fill === null) return [];
  return [`${colour(fill)} rg`, ...(fillOpacity < 1 ? [`/${names.opacity(fillOpacity)} gs`] : [])];
}

function strokeSetting({ stroke, width, dash }: Style): string[] {
  if (stroke === null) return [];
  return [`${colour(stroke)} RG`, `${number(width)} w`, ...(dash === null ? [] : [`[${numbers(...dash)}] 0 d`])];
}

/** The operator that paints a path: fill, stroke, or both; null for nothing to see. */
function painting({ fill, tile, stroke }: Style): 'f' | 'S' | 'B' | null {
  if (fill === null && tile === null) return stroke === null ? null : 'S';
  return stroke === null ? 'f' : 'B';
}

function shapeMarks(shape: Exclude<Shape, TextShape>, names: PageNames): string {
  const operator = painting(shape.style);
  if (operator === null || (shape.kind === 'path' && shape.points.length < 2)) return '';
  return ['q', ...fillSetting(shape.style, names), ...strokeSetting(shape.style), pathOf(shape), operator, 'Q'].join(
    ' ',
  );
}

const anchorShare = { start: 0, middle: 0.5, end: 1 } as const;

function textMarks(shape: TextShape, names: PageNames): string {
  if (shape.text === '') return '';
  const { font, bytes, width } = names.set(shape.text, shape.bold, shape.size);
  const left = shape.x - width * anchorShare[shape.anchor];
  const matrix = numbers(1, 0, shape.italic ? lean : 0, -1, left, shape.y);
  return `BT ${colour(shape.paint)} rg /${font} ${number(shape.size)} Tf ${matrix} Tm ${bytes} Tj ET`;
}

/** Shapes as the operators of a PDF content stream (ISO 32000-1, annex A) whose unit is 1 mm, y downward. */
export const marksOf = (shapes: readonly Shape[], names: PageNames): string =>
  shapes
    .map((shape) => (shape.kind === 'text' ? textMarks(shape, names) : shapeMarks(shape, names)))
    .filter(Boolean)
    .join('\n');
