import type { MaterialPart, Stratum } from '../../model/log.ts';
import { remembered } from '../remembered.ts';
import type { Shape, Tile } from '../shapes.ts';
import { groundTile } from './ground-tiles.ts';
import { dashes, dots, pebbles, strokes, triangles } from './motifs.ts';
import { moved } from './moved.ts';

/* A material this plentiful shows in the pattern: 30 % and more by the words of ASTM D2488, or named with the first. */
const plentiful: ReadonlySet<string> = new Set(['adjective', 'and', 'with', 'some', 'mostly', 'abundant']);

/** Marks of a second material, within 4 by 3 mm. */
const marks: Readonly<{ [material: string]: readonly Shape[] }> = {
  gravel: pebbles([
    [1.1, 0.8, 0.62, 0.44],
    [3, 2.1, 0.55, 0.4],
  ]),
  cobbles: pebbles([[1.7, 1.5, 1.05, 0.75]]),
  boulders: pebbles([[1.9, 1.5, 1.5, 1.05]]),
  sand: dots(
    [
      [0.5, 0.25],
      [1.9, 1.25],
      [3.3, 0.2],
      [0.9, 2.15],
      [2.7, 2.75],
    ],
    0.2,
  ),
  silt: [
    ...dots([
      [0.5, 0.95],
      [1.1, 0.95],
      [2.5, 2.35],
      [3.1, 2.35],
    ]),
    ...dashes([
      [1.5, 0.95, 0.7],
      [1.3, 2.35, 0.8],
    ]),
  ],
  clay: dashes([
    [0.3, 1.1, 1.5],
    [2.1, 2.6, 1.5],
  ]),
  chert: triangles(
    [
      [1, 0.9],
      [3, 2.3],
    ],
    0.55,
  ),
  shells: strokes([
    [
      [0.6, 1.2],
      [0.9, 0.7],
      [1.4, 0.7],
      [1.7, 1.2],
    ],
  ]),
  organics: strokes([
    [
      [0.5, 1.2],
      [0.8, 0.6],
      [1.1, 1.2],
      [1.4, 0.6],
    ],
  ]),
};

/* Rock has its own marks of what it is muddy or sandy with; these are the words that mean the same. */
const sameAs: Readonly<{ [material: string]: string }> = {
  shale: 'clay',
  mud: 'clay',
  sandstone: 'sand',
  siltstone: 'silt',
  stones: 'cobbles',
  pebbles: 'gravel',
  rocks: 'cobbles',
};

const markOf = (material: string): string =>
  Object.hasOwn(sameAs, material) ? (sameAs[material] ?? material) : material;

const isPlentiful = ({ amount }: MaterialPart): boolean => amount !== null && plentiful.has(amount);

/** The second materials that the pattern of a layer shows, at most two. */
export const shownWith = remembered(({ materials, principal }: Stratum): readonly string[] => {
  if (materials.length < 2) return [];
  const first = markOf(principal?.id ?? '');
  const others = materials.filter(isPlentiful).map(({ id }) => markOf(id));
  return [...new Set(others)].filter((id) => id !== first && Object.hasOwn(marks, id)).slice(0, 2);
});

const [cellWidth, cellHeight] = [4, 3];
/* The first material keeps this much of the pattern for each mark of a second. */
const cellsAcross = 2;

/** How many times a pattern is repeated to be about as large as the room that the second materials need. */
const repeats = (size: number, room: number): number => Math.max(1, Math.round(room / size));

function withMarks(tile: Tile, second: readonly string[], id: string): Tile {
  const across = repeats(tile.width, cellsAcross * cellWidth);
  const down = repeats(tile.height, cellsAcross * cellHeight);
  const [width, height] = [across * tile.width, down * tile.height];
  const ground = Array.from({ length: across * down }, (_, n) =>
    tile.shapes.map((shape) => moved(shape, (n % across) * tile.width, Math.floor(n / across) * tile.height)),
  );
  const corners = [
    [0, 0],
    [width / 2, height / 2],
  ] as const;
  const over = second.flatMap((id, n) =>
    corners.flatMap(([x, y]) =>
      (marks[id] ?? []).map((shape) => moved(shape, (x + (n * width) / 2) % width, Math.min(y, height - cellHeight))),
    ),
  );
  return { id, tint: tile.tint, width, height, shapes: [...ground.flat(), ...over] };
}

/* Patterns once made, by their names: there are no more than grounds times pairs of second materials. */
const made = new Map<string, Tile>();

function tileOf(stratum: Stratum): Tile {
  const tile = groundTile(stratum.ground);
  const second = shownWith(stratum);
  const id = [tile.id, ...second].join('-');
  const known = made.get(id) ?? (second.length === 0 ? tile : withMarks(tile, second, id));
  made.set(id, known);
  return known;
}

/** The pattern of a layer: its ground's, with marks of the other materials that there is much of. */
export const stratumTile = remembered(tileOf);
