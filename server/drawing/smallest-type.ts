import type { Drawing } from './scene.ts';

const mmToPoint = 72 / 25.4;

/** Size of the smallest type of a drawing in points, when it is printed at full size; null where it has no words. */
export function smallestType({ parts }: Drawing): number | null {
  const sizes = parts.flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.size] : [])));
  return sizes.length === 0 ? null : sizes.reduce((least, size) => Math.min(least, size)) * mmToPoint;
}
