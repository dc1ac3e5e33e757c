import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { cooperJacob } from './cooper-jacob.ts';
import { type Reading, readingsWithin, type Window } from './readings.ts';
import { rootMeanSquare } from './straight-line.ts';
import { theisDrawdown } from './theis-drawdown.ts';

export const about: Formula = {
  name: 'transmissivity by Theis',
  text: 's = Q W(u) / (4 π T), u = r² S / (4 T t), fitted to the drawdowns of the window by non-linear least squares over ln T and ln S',
  source: 'Theis 1935; Levenberg-Marquardt least squares',
  range: 'confined aquifer without end, steady rate, three readings at least, drawdown growing with time',
  caution:
    'The window decides the answer: read T with its window and misfit. One well’s own drawdown gives no storage coefficient.',
};

export interface TheisFit {
  /** m²/s. */
  readonly transmissivity: number;
  /** No unit; means something only for an observation well. */
  readonly storativity: number;
  /** Root mean square misfit, m. */
  readonly misfit: number;
  readonly readings: number;
  /** First and last time used, s. */
  readonly from: number;
  readonly to: number;
}

const MOST_ROUNDS = 50;
const LIKELY_STORATIVITY = 1e-4;

/**
 * Transmissivity and storage coefficient of the Theis curve that lies nearest to the readings of a window.
 *
 * Rate in m³/s, times in s, drawdown in m, distance in m. In the pumped well itself, give its radius and drop S.
 * The search starts from the Cooper–Jacob line of the same window. Source: Theis 1935.
 * Worked example: drawdowns computed with T 385 m²/d and S 0.00017 at 30 m give these back.
 */
export function theisFit(
  rate: number,
  readings: readonly Reading[],
  window: Window,
  distance: number,
): Outcome<TheisFit> {
  const used = readingsWithin(readings, window);
  const start = cooperJacob(rate, used, { from: null, to: null }, distance);
  if (!start.ok) return start;
  const { transmissivity, storativity, from, to } = start.value;
  const fitted = fit(rate, used, distance, [Math.log(transmissivity), Math.log(storativity ?? LIKELY_STORATIVITY)]);
  if (fitted === null) return refused('no Theis curve could be fitted to the readings');
  const [t, s] = [Math.exp(fitted.logT), Math.exp(fitted.logS)];
  const residuals = used.map(({ time, drawdown }) => drawdown - drawdownOr0(rate, t, s, distance, time));
  return known({
    transmissivity: t,
    storativity: s,
    misfit: rootMeanSquare(residuals),
    readings: used.length,
    from,
    to,
  });
}

function fit(
  rate: number,
  used: readonly Reading[],
  distance: number,
  initialValues: number[],
): { logT: number; logS: number } | null {
  const data = { x: used.map(({ time }) => time), y: used.map(({ drawdown }) => drawdown) };
  const curve =
    ([logT = 0, logS = 0]: number[]) =>
    (time: number): number =>
      drawdownOr0(rate, Math.exp(logT), Math.exp(logS), distance, time);
  try {
    const { parameterValues } = levenbergMarquardt(data, curve, {
      initialValues,
      maxIterations: MOST_ROUNDS,
      errorTolerance: 0,
      jacobianFunction: slopes(rate, distance),
    });
    const [logT = Number.NaN, logS = Number.NaN] = parameterValues;
    return Number.isFinite(logT) && Number.isFinite(logS) ? { logT, logS } : null;
  } catch {
    return null;
  }
}

/** Far out of range the curve is flat at nothing, which sends the search back. */
function drawdownOr0(rate: number, t: number, s: number, distance: number, time: number): number {
  const drawdown = theisDrawdown(rate, t, s, distance, time);
  return drawdown.ok ? drawdown.value : 0;
}

/** Slopes of the drawdown over ln T and over ln S: −s + Q e^-u / (4πT), and −Q e^-u / (4πT). */
function slopes(rate: number, distance: number): (parameters: number[]) => (time: number) => number[] {
  return ([logT = 0, logS = 0]) =>
    (time) => {
      const [t, s] = [Math.exp(logT), Math.exp(logS)];
      const change = (rate / (4 * Math.PI * t)) * Math.exp((-(distance ** 2) * s) / (4 * t * time));
      return [change - drawdownOr0(rate, t, s, distance, time), -change];
    };
}
