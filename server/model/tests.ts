import { unitById } from '../../grammar/units.ts';
import type { Measure, Moment, ObservedWell, Reading, Test } from './log.ts';
import { depthIn, measureIn, measureOfValue } from './measure.ts';
import { momentOfValue, periodIn } from './moment.ts';
import { remembered } from './remembered.ts';
import { entryOf, itemIn, type Source } from './source.ts';
import { textIn, wordIn } from './words.ts';

const minute = unitById('min') ?? null;

const hasItem = (source: Source, slot: string): boolean => itemIn(source, slot) !== null;

function readTest(source: Source): Test {
  return {
    ...entryOf(source),
    number: 1,
    method: wordIn(source, 'method'),
    rate: measureIn(source, 'rate'),
    intake: depthIn(source, 'intake'),
    stem: depthIn(source, 'stem'),
    duration: measureIn(source, 'duration'),
    start: periodIn(source, 'start', 'from'),
    toc: hasItem(source, 'toc'),
    phases: [],
    observed: [],
  };
}

/** A time on the clock of a test: elapsed, bare numbers in minutes, or a time of day. */
export interface TestTime {
  readonly elapsed: Measure | null;
  readonly clock: Moment | null;
}

function timeIn(source: Source, slot: string): TestTime {
  const value = itemIn(source, slot)?.value;
  if (!value) return { elapsed: null, clock: null };
  const clock = value.kind === 'moment' ? momentOfValue(source, value) : null;
  return { elapsed: clock ? null : measureOfValue(source, value, minute), clock };
}

function readReading(source: Source): Reading {
  return {
    ...entryOf(source),
    ...timeIn(source, 'elapsed'),
    level: depthIn(source, 'level', source.setting.datum),
    drawdown: depthIn(source, 'drawdown'),
    rate: measureIn(source, 'rate'),
  };
}

const readObserved = (source: Source): ObservedWell => ({
  ...entryOf(source),
  name: textIn(source, 'name'),
  distance: depthIn(source, 'distance'),
  drawdowns: hasItem(source, 'drawdown'),
  phases: [],
});

/** The head of `test`. */
export const testFact = remembered(readTest);
/** A line of `test`. */
export const readingFact = remembered(readReading);
export const observedFact = remembered(readObserved);
/** A change of rate. */
export const rateFact = remembered((source) => ({ ...entryOf(source), rate: measureIn(source, 'rate') }));
/** The stop of the pump, where the line says when. */
export const recoveryFact = remembered((source) => ({ ...entryOf(source), ...timeIn(source, 'stop') }));
