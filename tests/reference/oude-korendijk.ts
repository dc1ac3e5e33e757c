import type { Reading } from '../../server/calculations/index.ts';

/** Oude Korendijk, piezometer at 30 m, 788 m³/d (Kruseman and de Ridder): minutes, metres of drawdown. */
const MINUTES_METRES: readonly (readonly [number, number])[] = [
  [0.1, 0.04],
  [0.25, 0.08],
  [0.5, 0.13],
  [0.7, 0.18],
  [1, 0.23],
  [1.4, 0.28],
  [1.9, 0.33],
  [2.33, 0.36],
  [2.8, 0.39],
  [3.36, 0.42],
  [4, 0.45],
  [5.35, 0.5],
  [6.8, 0.54],
  [8.3, 0.57],
  [8.7, 0.58],
  [10, 0.6],
  [13.1, 0.64],
  [18, 0.68],
  [27, 0.742],
  [33, 0.753],
  [41, 0.779],
  [48, 0.793],
  [59, 0.819],
  [80, 0.855],
  [95, 0.873],
  [139, 0.915],
  [181, 0.935],
  [245, 0.966],
  [300, 0.99],
  [360, 1.007],
  [480, 1.05],
  [600, 1.053],
  [728, 1.072],
  [830, 1.088],
];

export const korendijkReadings: readonly Reading[] = MINUTES_METRES.map(([minutes, drawdown]) => ({
  time: minutes * 60,
  drawdown,
}));
export const korendijkRate = 788 / 86_400;
export const korendijkDistance = 30;
