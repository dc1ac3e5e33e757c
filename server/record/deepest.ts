import type { WellLog } from '../model/log.ts';
import { bottomOf } from './intervals.ts';

/** The deepest depth that anything in a log speaks of, m below ground; null where nothing has a depth. */
export function deepestOf(log: WellLog): number | null {
  let deepest = Number.NEGATIVE_INFINITY;
  for (const { interval } of log.strata) deepest = Math.max(deepest, bottomOf(interval) ?? deepest);
  for (const depth of depthsOf(log)) deepest = Math.max(deepest, depth ?? deepest);
  return deepest === Number.NEGATIVE_INFINITY ? null : deepest;
}

type Found = number | null;

function* depthsOf(log: WellLog): Generator<Found> {
  for (const { interval } of [...log.hole, ...log.existing]) yield bottomOf(interval);
  for (const drilling of log.drilling) {
    for (const { interval } of [...drilling.intervals, ...drilling.lost]) yield bottomOf(interval);
  }
  yield* depthsOfStrings(log);
  yield* depthsOfWater(log);
  for (const test of log.tests) yield test.intake?.value ?? null;
  for (const pump of log.pumps) yield pump.set?.value ?? null;
  for (const abandonment of log.abandonments) for (const fill of abandonment.fills) yield bottomOf(fill.interval);
  for (const photo of log.photos) yield photo.depth?.value ?? null;
}

function* depthsOfStrings({ strings }: WellLog): Generator<Found> {
  for (const string of strings) {
    yield bottomOf(string.interval);
    for (const { interval } of [...string.screens, ...string.fills]) yield bottomOf(interval);
    yield string.shoe?.depth?.value ?? null;
    for (const depth of string.centralizers?.positions ?? []) yield depth.value;
  }
}

function* depthsOfWater({ water }: WellLog): Generator<Found> {
  for (const found of water.found) yield found.depth?.value ?? bottomOf(found.interval);
  for (const each of [...water.gas, ...water.quality]) yield each.depth?.value ?? null;
  for (const level of water.levels) yield level.level?.value ?? null;
}
