import { type Formula, known, type Outcome, refused } from '../formula.ts';
import type { Reading } from './readings.ts';
import type { Step } from './step-test.ts';
import { type Line, straightLine } from './straight-line.ts';

export const about: Formula = {
  name: 'drawdown of each step by itself',
  text: "s(n) = ∑ Δs(i) up to step n; Δs(i) drawdown read a fixed time after the step began, less the line of the step before, drawn on to that time; that line is fitted to the later half of the step's readings, against ∑ ΔQ(j) log(t - t(j)) / Q of the steps up to it, t(j) the time at which step j began",
  source:
    'Hantush 1964, increments of drawdown; Birsoy and Summers 1980, time of several rates (both from memory); fitting the later half is common practice, no source',
  range:
    'rates above 0; times of the whole test counted from its start; each step read for as long as the fixed time, two readings in its later half',
  caution: null,
};

/** One step as it was read: rate in m³/s, start in s since the test began, readings with times since the test began. */
export interface StepReadings {
  readonly rate: number;
  readonly start: number;
  readonly readings: readonly Reading[];
}

/**
 * The drawdown that each step would reach by itself after the same time, for `stepTest`. The time after each start in s.
 *
 * Source: Hantush 1964; Birsoy and Summers 1980.
 * Worked example: steps of 1.0 m and 0.8 m more, level long before the next: 1.0 and 1.8 m.
 */
export function stepDrawdowns(steps: readonly StepReadings[], after: number): Outcome<Step[]> {
  if (steps.some(({ rate }) => !(rate > 0))) return refused('a step without a rate');
  const summed: Step[] = [];
  let before: ((time: number) => number) | null = null;
  let sum = 0;
  for (const [index, step] of steps.entries()) {
    const time = step.start + after;
    const reached = drawdownAt(step.readings, time);
    if (reached === null) return refused('a step was not read for as long as the chosen time');
    sum += reached - (before?.(time) ?? 0);
    summed.push({ rate: step.rate, drawdown: sum });
    const pumped = steps.slice(0, index + 1);
    const line = laterHalf(step, (at) => timeOfRates(pumped, at));
    if (!line.ok) return refused('a step has fewer than two readings in its later half');
    const { intercept, slope } = line.value;
    before = (at) => intercept + slope * timeOfRates(pumped, at);
  }
  return known(summed);
}

/** Logarithm of the time, at the last rate, that the steps so far come to: ∑ ΔQ(j) log(t − t(j)) / Q. */
function timeOfRates(steps: readonly StepReadings[], time: number): number {
  let [sum, before] = [0, 0];
  for (const { rate, start } of steps) {
    sum += (rate - before) * Math.log10(time - start);
    before = rate;
  }
  return sum / before;
}

function laterHalf({ readings, start }: StepReadings, placeOf: (time: number) => number): Outcome<Line> {
  const inOrder = readings.filter(({ time }) => time > start).sort((a, b) => a.time - b.time);
  const later = inOrder.slice(Math.floor(inOrder.length / 2));
  return straightLine(later.map(({ time, drawdown }) => ({ x: placeOf(time), y: drawdown })));
}

/** Read at that time, or between the readings on both sides of it; null beyond the last. */
function drawdownAt(readings: readonly Reading[], time: number): number | null {
  const inOrder = [...readings].sort((a, b) => a.time - b.time);
  const next = inOrder.find((reading) => reading.time >= time);
  const last = inOrder.findLast((reading) => reading.time <= time);
  if (!next || !last) return null;
  if (next.time === last.time) return next.drawdown;
  const share = (time - last.time) / (next.time - last.time);
  return last.drawdown + share * (next.drawdown - last.drawdown);
}
