import { type Shape, stroked, type Tile } from '../shapes.ts';
import { dashes, dots, pebbles, strokes, triangles } from './motifs.ts';

interface FillLook {
  readonly name: string;
  readonly tile: Tile;
}

const hatch = (size: number): Shape[] =>
  strokes([
    [
      [0, size],
      [size, 0],
    ],
    [
      [-0.2, 0.2],
      [0.2, -0.2],
    ],
    [
      [size - 0.2, size + 0.2],
      [size + 0.2, size - 0.2],
    ],
  ]);

const backHatch = (size: number): Shape[] =>
  strokes([
    [
      [0, 0],
      [size, size],
    ],
    [
      [-0.2, size - 0.2],
      [0.2, size + 0.2],
    ],
    [
      [size - 0.2, -0.2],
      [size + 0.2, 0.2],
    ],
  ]);

const tile = (name: string, tint: Tile['tint'], width: number, height: number, shapes: readonly Shape[]): Tile => ({
  id: `fill-${name}`,
  tint,
  width,
  height,
  shapes,
});

const specks = dots(
  [
    [0.4, 0.4],
    [1.5, 0.9],
    [0.8, 1.6],
    [1.9, 2],
  ],
  0.12,
);

/* Hatches of what stands in an annulus: common practice, no source. */
const looks: Readonly<{ [fillClass: string]: FillLook }> = {
  cement: { name: 'Cement grout', tile: tile('cement', 'fill-cement', 2.3, 2.4, specks) },
  concrete: {
    name: 'Concrete',
    tile: tile('concrete', 'fill-cement', 3.4, 3, [
      ...triangles(
        [
          [0.9, 0.9],
          [2.5, 2.2],
        ],
        0.4,
      ),
      ...dots(
        [
          [2.3, 0.5],
          [0.7, 2.3],
        ],
        0.12,
      ),
    ]),
  },
  'bentonite-slurry': {
    name: 'Bentonite grout',
    tile: tile('bentonite-slurry', 'fill-bentonite', 1.5, 1.5, hatch(1.5)),
  },
  'bentonite-dry': {
    name: 'Bentonite chips or pellets',
    tile: tile('bentonite-dry', 'fill-bentonite', 1.5, 1.5, [...hatch(1.5), ...backHatch(1.5)]),
  },
  granular: {
    name: 'Filter pack, granular',
    tile: tile(
      'granular',
      'fill-granular',
      2,
      2,
      pebbles([
        [0.5, 0.5, 0.38, 0.34],
        [1.5, 1.45, 0.38, 0.34],
      ]),
    ),
  },
  native: {
    name: 'Native material',
    tile: tile(
      'native',
      null,
      2.4,
      2,
      dashes([
        [0.2, 0.5, 0.9],
        [1.3, 1.5, 0.9],
      ]),
    ),
  },
};

const unknownLook: FillLook = {
  name: 'Fill, material not recorded',
  tile: tile(
    'unknown',
    null,
    3,
    3,
    strokes(
      [
        [
          [0.4, 2.6],
          [2.6, 0.4],
        ],
      ],
      stroked('doubt', 0.16, [0.5, 0.4]),
    ),
  ),
};

/** How a fill of that family is drawn, and what the legend calls it. */
export const fillLook = (fillClass: string | null): FillLook =>
  (fillClass !== null && Object.hasOwn(looks, fillClass) ? looks[fillClass] : undefined) ?? unknownLook;

/** Every family that has a hatch of its own. */
export const drawnFills: readonly string[] = Object.keys(looks);
