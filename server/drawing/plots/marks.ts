import {
  ellipse,
  filled,
  line,
  outlined,
  type Paint,
  polygon,
  rect,
  type Shape,
  type Style,
  stroked,
} from '../shapes.ts';

/** How the readings of one well are marked. */
export interface Mark {
  readonly paint: Paint;
  readonly shapes: (x: number, y: number) => Shape[];
}

const size = 0.85;

const dot = (x: number, y: number): Shape[] => [ellipse(x, y, size, size, filled('water'))];
const triangle = (x: number, y: number): Shape[] => [
  polygon(
    [
      [x - size, y + size * 0.8],
      [x + size, y + size * 0.8],
      [x, y - size],
    ],
    outlined('paper', 'plot-2', 0.3),
  ),
];
const square = (x: number, y: number): Shape[] => [
  rect(x - size * 0.85, y - size * 0.85, size * 1.7, size * 1.7, outlined('paper', 'plot-3', 0.3)),
];
const ring = (x: number, y: number): Shape[] => [ellipse(x, y, size, size, outlined('paper', 'ink', 0.3))];

const marks: readonly Mark[] = [
  { paint: 'water', shapes: dot },
  { paint: 'plot-2', shapes: triangle },
  { paint: 'plot-3', shapes: square },
  { paint: 'ink', shapes: ring },
];

/** The mark of the nth well of a test; the pumped one is the first. */
export const markOf = (index: number): Mark => marks[index % marks.length] ?? { paint: 'ink', shapes: ring };

/** The strokes that fitted lines are drawn with. */
export const fitStyles: Readonly<{ [method: string]: Style }> = {
  'cooper-jacob': stroked('doubt', 0.4),
  recovery: stroked('doubt', 0.4),
  theis: stroked('doubt', 0.35, [1.4, 0.9]),
};

/** A short stroke at each end of the stretch that a line was fitted to. */
export const windowEnds = (points: readonly (readonly [number, number])[]): Shape[] =>
  [points[0], points.at(-1)].flatMap((point) =>
    point === undefined
      ? []
      : [
          line(
            [
              [point[0], point[1] - 1.6],
              [point[0], point[1] + 1.6],
            ],
            stroked('doubt', 0.3),
          ),
        ],
  );
