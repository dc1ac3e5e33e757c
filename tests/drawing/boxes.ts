import type { Drawing } from '../../server/drawing/index.ts';
import type { Box, Part, Shape, TextShape } from '../../server/drawing/shapes.ts';

/** What a shape covers, in mm. Text covers its measured width, from its ascenders to its descenders. */
export function boxOf(shape: Shape): Box {
  if (shape.kind === 'rect') return shape;
  if (shape.kind === 'ellipse')
    return { x: shape.x - shape.rx, y: shape.y - shape.ry, width: 2 * shape.rx, height: 2 * shape.ry };
  if (shape.kind === 'text') return textBox(shape);
  const [xs, ys] = [shape.points.map(({ x }) => x), shape.points.map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

function textBox({ x, y, size, width, anchor }: TextShape): Box {
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { x: left, y: y - 0.75 * size, width, height: 0.95 * size };
}

export interface PlacedText {
  readonly part: Part;
  readonly text: string;
  readonly box: Box;
}

/* Queries stand on the drawing itself, over what they question. */
const drawnOver = new Set(['doubt', 'gap', 'layer', 'contact-doubtful']);

/** The words of a drawing that must be readable: all but the queries drawn over the thing they question. */
export const wordsOf = (drawing: Drawing): PlacedText[] =>
  drawing.parts
    .filter(({ name }) => !drawnOver.has(name))
    .flatMap((part) =>
      part.shapes.flatMap((shape) => (shape.kind === 'text' ? [{ part, text: shape.text, box: boxOf(shape) }] : [])),
    );

const slack = 0.01;

export const overlaps = (a: Box, b: Box): boolean =>
  a.x + a.width > b.x + slack &&
  b.x + b.width > a.x + slack &&
  a.y + a.height > b.y + slack &&
  b.y + b.height > a.y + slack;

/** Pairs of words that lie over each other. */
export function overlappingWords(drawing: Drawing): string[] {
  const words = wordsOf(drawing)
    .filter(({ text }) => text.trim() !== '')
    .sort((a, b) => a.box.y - b.box.y);
  const pairs: string[] = [];
  for (const [n, one] of words.entries()) {
    for (let m = n + 1; m < words.length; m += 1) {
      const other = words[m];
      if (other === undefined || other.box.y > one.box.y + one.box.height) break;
      if (overlaps(one.box, other.box))
        pairs.push(`${one.part.name} "${one.text}" | ${other.part.name} "${other.text}"`);
    }
  }
  return pairs;
}

/** Shapes that reach out of the page, or whose place is no number. */
export const outsidePage = ({ parts, widthMm, heightMm }: Drawing): string[] =>
  parts.flatMap((part) =>
    part.shapes.flatMap((shape) => {
      const { x, y, width, height } = boxOf(shape);
      const isInside = x >= 0 && y >= 0 && x + width <= widthMm + slack && y + height <= heightMm + slack;
      return isInside && width >= -slack && height >= -slack
        ? []
        : [`${part.name} ${part.title}: ${JSON.stringify(boxOf(shape))}`];
    }),
  );
