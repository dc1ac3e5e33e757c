import { ellipse, filled, line, outlined, type Pairs, polygon, type Shape, stroked } from '../shapes.ts';

const thin = stroked('ink', 0.14);
const thick = stroked('ink', 0.3);

/** Filled dots at the points. */
export const dots = (points: Pairs, radius = 0.16): Shape[] =>
  points.map(([x, y]) => ellipse(x, y, radius, radius, filled('ink')));

/** Open rounded stones: centre, half width, half height. */
export const pebbles = (stones: readonly (readonly [number, number, number, number])[]): Shape[] =>
  stones.map(([x, y, rx, ry]) => ellipse(x, y, rx, ry, outlined('paper', 'ink', 0.14)));

/** Level strokes: left end and length. */
export const dashes = (strokes: readonly (readonly [number, number, number])[], style = thin): Shape[] =>
  strokes.map(([x, y, length]) =>
    line(
      [
        [x, y],
        [x + length, y],
      ],
      style,
    ),
  );

export const thickDashes = (strokes: readonly (readonly [number, number, number])[]): Shape[] => dashes(strokes, thick);

/** Straight strokes from point to point. */
export const strokes = (pairs: readonly Pairs[], style = thin): Shape[] => pairs.map((points) => line(points, style));

/** Courses of brick `width` by `height`; `slant` leans the upright joints. Fills a tile `width` by twice `height`. */
export const bricks = (width: number, height: number, slant = 0): Shape[] => [
  ...dashes([
    [0, 0.5 * height, width],
    [0, 1.5 * height, width],
  ]),
  ...strokes([
    [
      [0.25 * width + slant / 2, 0.5 * height],
      [0.25 * width - slant / 2, 1.5 * height],
    ],
    [
      [0.75 * width + slant / 4, 0],
      [0.75 * width, 0.5 * height],
    ],
    [
      [0.75 * width, 1.5 * height],
      [0.75 * width - slant / 4, 2 * height],
    ],
  ]),
];

/** A level wave of one period across the tile. */
export function wave(y: number, width: number, swing: number, style = thin): Shape {
  const steps = Array.from({ length: 13 }, (_, n) => n / 12);
  return line(
    steps.map((t) => [t * width, y + swing * Math.sin(2 * Math.PI * t)] as const),
    style,
  );
}

/** Small crosses of two strokes. */
export const crosses = (points: Pairs, reach: number): Shape[] =>
  points.flatMap(([x, y]) =>
    strokes([
      [
        [x - reach, y],
        [x + reach, y],
      ],
      [
        [x, y - reach],
        [x, y + reach],
      ],
    ]),
  );

/** Crosses that stand on their feet. */
export const saltires = (points: Pairs, reach: number): Shape[] =>
  points.flatMap(([x, y]) =>
    strokes([
      [
        [x - reach, y - reach],
        [x + reach, y + reach],
      ],
      [
        [x + reach, y - reach],
        [x - reach, y + reach],
      ],
    ]),
  );

/** Angle marks, open to the top. */
export const vees = (points: Pairs, reach: number): Shape[] =>
  strokes(
    points.map(
      ([x, y]) =>
        [
          [x - reach, y - reach],
          [x, y + reach],
          [x + reach, y - reach],
        ] as const,
    ),
  );

/** Corner marks of an L, turned by quarters. */
export const corners = (points: readonly (readonly [number, number, number])[], reach: number): Shape[] =>
  strokes(
    points.map(([x, y, quarter]) => {
      const across = quarter % 2 === 0 ? reach : -reach;
      const along = quarter < 2 ? reach : -reach;
      return [
        [x + across, y],
        [x, y],
        [x + across * 0.3, y - along],
      ] as const;
    }),
  );

/** Open triangles. */
export const triangles = (points: Pairs, reach: number): Shape[] =>
  points.map(([x, y]) =>
    polygon(
      [
        [x - reach, y + 0.7 * reach],
        [x + reach, y + 0.7 * reach],
        [x + 0.15 * reach, y - 0.9 * reach],
      ],
      outlined('paper', 'ink', 0.14),
    ),
  );

/** The whole tile in one dark fill. */
export const solid = (width: number, height: number): Shape[] => [
  polygon(
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    filled('coal'),
  ),
];

/** Light level strokes on a dark fill. */
export const lightDashes = (marks: readonly (readonly [number, number, number])[]): Shape[] =>
  dashes(marks, stroked('coal-mark', 0.3));
