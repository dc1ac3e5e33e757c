import type { Shape } from '../shapes.ts';

/** The shape at another place. */
export function moved(shape: Shape, right: number, down: number): Shape {
  if (shape.kind === 'path')
    return { ...shape, points: shape.points.map(({ x, y }) => ({ x: x + right, y: y + down })) };
  return { ...shape, x: shape.x + right, y: shape.y + down };
}
