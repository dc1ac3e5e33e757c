import { type Formula, known, type Outcome, refused } from '../formula.ts';
import type { Reading } from './readings.ts';
import type { Step } from './step-test.ts';
import { type Line, straightLine } from './straight-line.ts';

export const about: Formula = {
  name: 'drawdown of each step by itself',
  text: "s(n) = ∑ Δs(i) up to step n; Δs(i) drawdown read a fixed time after the step began, less the line of the step before, drawn on to that time against the logarithm of time; the line is fitted to the later half of the step's readings",
  source: 'Hantush 1964, increments of drawdown; fitting the later half is common practice, no source',
  range:
    'times of the whole test counted from its start; each step read for as long as the fixed time, two readings in its later half',
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
 * Source: Hantush 1964. Worked example: steps of 1.0 m and 0.8 m more, level long before the next: 1.0 and 1.8 m.
 */
export function stepDrawdowns(steps: readonly StepReadings[], after: number): Outcome<Step[]> {
  const summed: Step[] = [];
  let before: Line | null = null;
  let sum = 0;
  for (const step of steps) {
    const time = step.start + after;
    const reached = drawdownAt(step.readings, time);
    if (reached === null) return refused('a step was not read for as long as the chosen time');
    sum += reached - (before === null ? 0 : before.intercept + before.slope * Math.log10(time));
    summed.push({ rate: step.rate, drawdown: sum });
    const line = laterHalf(step.readings);
    if (!line.ok) return refused('a step has fewer than two readings in its later half');
    before = line.value;
  }
  return known(summed);
}

function laterHalf(readings: readonly Reading[]): Outcome<Line> {
  const later = [...readings].sort((a, b) => a.time - b.time).slice(Math.floor(readings.length / 2));
  return straightLine(later.map(({ time, drawdown }) => ({ x: Math.log10(time), y: drawdown })));
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
