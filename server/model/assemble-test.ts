import type { When } from './casing-top.ts';
import { type Draft, isBare, noteQuestions, type Place, take } from './draft.ts';
import type { Measure, ObservedWell, Phase, Reading, Test } from './log.ts';
import type { Setting } from './setting.ts';
import { bearingsAt, entryFrom } from './survey.ts';
import { elapsedMeasure, lastOnPumpingClock, lastPumping, secondsSinceStart } from './test-clock.ts';
import { observedFact, rateFact, readingFact, recoveryFact, type TestTime, testFact } from './tests.ts';

/** A `test` line opens a test of its own. */
export function addTest(draft: Draft, place: Place): void {
  const number = draft.log.tests.length + 1;
  const test: Test = { ...take(draft, place, testFact), number, phases: [], observed: [] };
  draft.log.tests.push(test);
  draft.test = test;
  draft.observed = null;
}

export function addObserved(draft: Draft, place: Place): void {
  if (!draft.test) return;
  const well: ObservedWell = { ...take(draft, place, observedFact), phases: [] };
  draft.test.observed.push(well);
  draft.observed = well;
}

const phasesOf = (draft: Draft, test: Test): Phase[] => draft.observed?.phases ?? test.phases;

const newPhase = (kind: Phase['kind'], rate: Measure | null, stop: number | null, span: Phase['span']): Phase => ({
  kind,
  rate,
  stop,
  readings: [],
  span,
});

/** A new rate holds from the reading above. */
export function addRate(draft: Draft, place: Place): void {
  if (!draft.test) return;
  const { rate, span } = take(draft, place, rateFact);
  phasesOf(draft, draft.test).push(newPhase('pumping', rate, null, span));
}

const stopOfTest = ({ phases }: Test): number | null => phases.find(({ kind }) => kind === 'recovery')?.stop ?? null;

const secondsOf = (test: Test, { elapsed, clock }: TestTime, notBefore: number): number | null =>
  clock ? secondsSinceStart(test, clock, notBefore) : (elapsed?.value ?? null);

/** The clock starts again where the pump stopped: as written, as in the pumped well, or at the last pumping reading. */
export function addRecovery(draft: Draft, place: Place): void {
  const { test } = draft;
  if (!test) return;
  const entry = take(draft, place, recoveryFact);
  const phases = phasesOf(draft, test);
  const written = secondsOf(test, entry, lastOnPumpingClock(phases));
  const stop = written ?? stopOfTest(test) ?? lastPumping(phases);
  phases.push(newPhase('recovery', null, stop, entry.span));
}

function currentPhase(draft: Draft, test: Test, reading: Reading): Phase {
  const phases = phasesOf(draft, test);
  const open = phases.at(-1);
  if (open) return open;
  const phase = newPhase('pumping', test.rate, null, reading.span);
  phases.push(phase);
  return phase;
}

/** The reading with the time since the start of its phase, where it is written as a time of day. */
function onClock(reading: Reading, test: Test, phase: Phase, notBefore: number): Reading {
  if (!reading.clock) return reading;
  const seconds = secondsSinceStart(test, reading.clock, notBefore);
  const start = phase.kind === 'recovery' ? phase.stop : 0;
  if (seconds === null || start === null) return reading;
  return { ...reading, elapsed: elapsedMeasure(seconds - start, reading.clock) };
}

const asDrawdown = (reading: Reading): Reading =>
  reading.level === null || reading.drawdown !== null ? reading : { ...reading, level: null, drawdown: reading.level };

/** Levels of another well are not from the top of this one's casing, and its drawdowns from no top at all. */
function settingFor({ setting, fromTop, observed }: Draft, { toc }: Test): Setting {
  return toc && !observed?.drawdowns ? fromTop : setting;
}

function readingAt(draft: Draft, place: Place, test: Test): Reading {
  const fact = readingFact(place.line, place.number, settingFor(draft, test), null);
  noteQuestions(draft, fact);
  if (!fact.waits) return fact.entry;
  const when: When = { moment: test.start?.from ?? null, line: place.number };
  const bearings = bearingsAt(draft.survey, when);
  return entryFrom(fact, draft.observed ? { ...bearings, casingTop: null } : bearings);
}

export function addReading(draft: Draft, place: Place): void {
  const { test } = draft;
  if (!test || isBare(place)) return;
  const read = readingAt(draft, place, test);
  const reading = draft.observed?.drawdowns ? asDrawdown(read) : read;
  const phase = currentPhase(draft, test, reading);
  phase.readings.push(onClock(reading, test, phase, lastOnPumpingClock(phasesOf(draft, test))));
}
