import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { type Reading, readingsWithin, type Window } from './readings.ts';
import { straightLine } from './straight-line.ts';

export const about: Formula = {
  name: 'transmissivity by Cooper and Jacob',
  text: 'T = ln 10 Q / (4 π Δs); S = 4 e^-γ T t0 / r² = 2.25 T t0 / r²; Δs drawdown in a tenfold of time, t0 time at which the line meets no drawdown, r distance of the observation well; straight line by least squares over the window',
  source:
    'Cooper and Jacob 1946; Oude Korendijk, 788 m³/d, r 30 m, 1 to 10 min, T 385 m²/d, S 1.7e-4 in Kruseman and de Ridder (results from memory)',
  range:
    'steady rate, three readings at least, drawdown growing with time; u = r² S / (4 T t) small, 0.01 by the strict rule',
  caution:
    'The window decides the answer: read T with its window and misfit. One well’s own drawdown gives no storage coefficient. Early time in the pumped well is ruled by what the casing stores.',
};

export interface CooperJacob {
  /** m²/s. */
  readonly transmissivity: number;
  /** No unit; null without an observation well's distance. */
  readonly storativity: number | null;
  /** Drawdown in a tenfold of time, Δs, m. */
  readonly slope: number;
  /** Time at which the line meets no drawdown, t0, s. */
  readonly zeroTime: number;
  /** Root mean square misfit, m. */
  readonly misfit: number;
  /** Readings used, and the first and last of their times, s. */
  readonly readings: number;
  readonly from: number;
  readonly to: number;
  /** u at the first reading used: the largest; null without a distance. */
  readonly largestU: number | null;
}

/** Above this u the straight line is not strictly one (Cooper and Jacob; 0.05 to 0.1 is usual in practice, from memory). */
export const STRICT_U = 0.01;

const FEWEST_READINGS = 3;
const E_TO_GAMMA = 1.781_072_417_990_198;

/**
 * Transmissivity from a straight line of drawdown against the logarithm of time, by least squares over a window.
 *
 * Rate in m³/s, times in s, drawdown in m, distance of the observation well in m (null: the pumped well itself, for
 * which no storage coefficient is given). A u above 0.01 is reported, not refused.
 * Source: Cooper and Jacob 1946.
 * Worked example: Oude Korendijk, 788 m³/d, r 30 m, 1 to 10 min: Δs 0.375 m, t0 0.25 min, T 385 m²/d, S 1.7e-4.
 */
export function cooperJacob(
  rate: number,
  readings: readonly Reading[],
  window: Window,
  distance: number | null,
): Outcome<CooperJacob> {
  if (!(rate > 0)) return refused('nothing was pumped');
  if (distance !== null && !(distance > 0)) return refused('the distance of the observation well is not above zero');
  const used = readingsWithin(readings, window);
  if (used.length < FEWEST_READINGS) return refused('fewer than three readings in the window');
  const line = straightLine(used.map(({ time, drawdown }) => ({ x: Math.log10(time), y: drawdown })));
  if (!line.ok) return line;
  const { intercept, slope, misfit } = line.value;
  if (!(slope > 0)) return refused('drawdown does not grow with time in the window');
  const transmissivity = (Math.LN10 * rate) / (4 * Math.PI * slope);
  const zeroTime = 10 ** (-intercept / slope);
  const from = used.reduce((first, { time }) => Math.min(first, time), Number.POSITIVE_INFINITY);
  return known({
    transmissivity,
    storativity: distance === null ? null : ((4 / E_TO_GAMMA) * transmissivity * zeroTime) / distance ** 2,
    slope,
    zeroTime,
    misfit,
    readings: used.length,
    from,
    to: used.reduce((last, { time }) => Math.max(last, time), 0),
    largestU: distance === null ? null : zeroTime / (E_TO_GAMMA * from),
  });
}
