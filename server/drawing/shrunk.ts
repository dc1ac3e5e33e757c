import type { Drawing } from './scene.ts';
import type { Part, Shape, Style, Tile } from './shapes.ts';

const styleBy = (style: Style, factor: number): Style => ({
  ...style,
  width: style.width * factor,
  dash: style.dash?.map((each) => each * factor) ?? null,
});

function shapeBy(shape: Shape, factor: number): Shape {
  const by = (value: number): number => value * factor;
  switch (shape.kind) {
    case 'path': {
      const points = shape.points.map(({ x, y }) => ({ x: by(x), y: by(y) }));
      return { ...shape, points, style: styleBy(shape.style, factor) };
    }
    case 'text':
      return { ...shape, x: by(shape.x), y: by(shape.y), size: by(shape.size), width: by(shape.width) };
    case 'rect': {
      const [width, height] = [by(shape.width), by(shape.height)];
      return { ...shape, x: by(shape.x), y: by(shape.y), width, height, style: styleBy(shape.style, factor) };
    }
    default:
      return {
        ...shape,
        x: by(shape.x),
        y: by(shape.y),
        rx: by(shape.rx),
        ry: by(shape.ry),
        style: styleBy(shape.style, factor),
      };
  }
}

const shapesBy = (shapes: readonly Shape[], factor: number): Shape[] => shapes.map((shape) => shapeBy(shape, factor));

const partBy = (part: Part, factor: number): Part => ({ ...part, shapes: shapesBy(part.shapes, factor) });

const tileBy = (tile: Tile, factor: number): Tile => ({
  ...tile,
  width: tile.width * factor,
  height: tile.height * factor,
  shapes: shapesBy(tile.shapes, factor),
});

/** The whole drawing, smaller by `factor`: lengths, lines, patterns and type. */
export const shrunk = (drawing: Drawing, factor: number): Drawing => ({
  ...drawing,
  widthMm: drawing.widthMm * factor,
  heightMm: drawing.heightMm * factor,
  tiles: drawing.tiles.map((tile) => tileBy(tile, factor)),
  parts: drawing.parts.map((part) => partBy(part, factor)),
});

function movedShape(shape: Shape, across: number, down: number): Shape {
  if (shape.kind !== 'path') return { ...shape, x: shape.x + across, y: shape.y + down };
  return { ...shape, points: shape.points.map(({ x, y }) => ({ x: x + across, y: y + down })) };
}

/** The parts, elsewhere on their sheet, by mm. */
export const moved = (parts: readonly Part[], across: number, down: number): Part[] =>
  parts.map((part) => ({ ...part, shapes: part.shapes.map((shape) => movedShape(shape, across, down)) }));
