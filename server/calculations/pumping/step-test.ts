import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { straightLine } from './straight-line.ts';

export const about: Formula = {
  name: 'step test by Hantush and Bierschenk',
  text: 's / Q = B + C Q; Q rate of the step, m³/s; s drawdown that the step would reach by itself after the same time, m; B s/m², C s²/m⁵; straight line by least squares. Share of B: B Q / (B Q + C Q²)',
  source: 'Hantush 1964, Bierschenk 1963',
  range: 'two steps at least, rates that differ',
  caution: 'Two steps always lie on a line: the misfit says nothing before there are three.',
};

/** One step: its rate in m³/s and the drawdown summed over the steps, each after the same time, m. */
export interface Step {
  readonly rate: number;
  readonly drawdown: number;
}

export interface StepTest {
  /** Loss in proportion to the rate, B, s/m². */
  readonly linear: number;
  /** Loss with the square of the rate, C, s²/m⁵. */
  readonly square: number;
  /** Root mean square misfit of s/Q, s/m². */
  readonly misfit: number;
}

/**
 * Coefficients of s = B Q + C Q² by a least-squares line of s/Q against Q. Rates in m³/s, drawdowns in m.
 *
 * Refused where C comes out below zero: the well then opened while it was pumped, or the steps were not held.
 * Source: Hantush 1964, Bierschenk 1963. Worked example: steps made with B 281.7 s/m² and C 1082 s²/m⁵ give these back.
 */
export function stepTest(steps: readonly Step[]): Outcome<StepTest> {
  if (steps.some(({ rate }) => !(rate > 0))) return refused('a step without a rate');
  const line = straightLine(steps.map(({ rate, drawdown }) => ({ x: rate, y: drawdown / rate })));
  if (!line.ok) return refused('a step test needs two steps of different rates');
  const { intercept, slope, misfit } = line.value;
  if (slope < 0) return refused('the loss falls as the rate grows: the well developed, or the steps were not held');
  return known({ linear: intercept, square: slope, misfit });
}

/** Share of a step's drawdown that grows in proportion to the rate, a fraction. Worked example: B 2, C 1, Q 2: 0.5. */
export function linearShare({ linear, square }: StepTest, rate: number): Outcome {
  const drawdown = linear * rate + square * rate ** 2;
  return drawdown > 0 ? known((linear * rate) / drawdown) : refused('there is no drawdown');
}
