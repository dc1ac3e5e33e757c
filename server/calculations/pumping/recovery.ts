import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { type Reading, readingsWithin, type Window } from './readings.ts';
import { straightLine } from './straight-line.ts';

export const about: Formula = {
  name: 'transmissivity by recovery',
  text: "T = ln 10 Q / (4 π Δs'); Δs' residual drawdown in a tenfold of t / t'; t time since pumping began, t' since it stopped; straight line by least squares over the window of t'",
  source: 'Theis 1935, recovery method',
  range: 'steady rate before, three readings at least, recovery under way',
  caution:
    "Residual drawdown gives no storage coefficient. A line that meets no drawdown far from t / t' = 1 tells of recharge, a limit of the aquifer, or a level that had not settled.",
};

export interface Recovery {
  /** m²/s. */
  readonly transmissivity: number;
  /** Residual drawdown in a tenfold of t/t′, m. */
  readonly slope: number;
  /** t/t′ at which the line meets no residual drawdown; near 1 where the theory holds. */
  readonly zeroRatio: number;
  /** Root mean square misfit, m. */
  readonly misfit: number;
  readonly readings: number;
}

const FEWEST_READINGS = 3;

/**
 * Transmissivity from residual drawdown against the logarithm of t/t′, by least squares over a window of t′.
 *
 * Rate before the stop in m³/s, time pumped in s; readings: t′ in s, residual drawdown in m. T in m²/s.
 * Source: Theis 1935. Worked example: 2,500 m³/d for 240 min, Δs′ 0.40 m: T 1,140 m²/d (Todd, from memory).
 */
export function recovery(
  rate: number,
  timePumped: number,
  readings: readonly Reading[],
  window: Window,
): Outcome<Recovery> {
  if (!(rate > 0)) return refused('nothing was pumped');
  if (!(timePumped > 0)) return refused('the time pumped is not above zero');
  const used = readingsWithin(readings, window);
  if (used.length < FEWEST_READINGS) return refused('fewer than three readings in the window');
  const line = straightLine(
    used.map(({ time, drawdown }) => ({ x: Math.log10((timePumped + time) / time), y: drawdown })),
  );
  if (!line.ok) return line;
  const { intercept, slope, misfit, points } = line.value;
  if (!(slope > 0)) return refused('the level does not recover in the window');
  const transmissivity = (Math.LN10 * rate) / (4 * Math.PI * slope);
  return known({ transmissivity, slope, zeroRatio: 10 ** (-intercept / slope), misfit, readings: points });
}
