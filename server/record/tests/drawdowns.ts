import type { Reading as Drawdown } from '../../calculations/pumping/readings.ts';
import type { Depth, ObservedWell, Phase, Reading, Test, WellLog } from '../../model/log.ts';
import { inDoubt } from '../intervals.ts';
import { staticLevelOf } from '../water/static-level.ts';

/** A well whose level was read in a test: the pumped one, or an observation well. */
export interface ReadWell {
  readonly phases: readonly Phase[];
  /** Level at rest, as written; null where the readings are drawdowns or nobody wrote it. */
  readonly rest: Depth | null;
}

/** Drawdowns in m and times in s since the start of the phase's clock; readings without one of them are left out. */
export interface Series {
  readonly readings: readonly Drawdown[];
  readonly doubtful: boolean;
  /** Line of the first and of the last reading used. */
  readonly firstLine: number | null;
  readonly lastLine: number | null;
}

const atStart = (phases: readonly Phase[]): Reading | undefined =>
  phases[0]?.kind === 'pumping'
    ? phases[0].readings.find((reading) => reading.elapsed?.value === 0 && reading.level !== null)
    : undefined;

/** The pumped well: its level at rest is the reading at no time, else the static level of the log. */
export const pumpedWell = (test: Test, log: WellLog): ReadWell => ({
  phases: test.phases,
  rest: atStart(test.phases)?.level ?? staticLevelOf(log)?.level ?? null,
});

export const observedWell = (well: ObservedWell): ReadWell => ({
  phases: well.phases,
  rest: atStart(well.phases)?.level ?? null,
});

export const pumpingPhases = (well: ReadWell): Phase[] => well.phases.filter((phase) => phase.kind === 'pumping');

export const recoveryPhase = (well: ReadWell): Phase | null =>
  well.phases.find((phase) => phase.kind === 'recovery') ?? null;

/** Drawdown of one reading in m: as written, else its level less the level at rest. */
export function drawdownOf(reading: Reading, rest: Depth | null): number | null {
  if (reading.drawdown?.value != null) return reading.drawdown.value;
  if (reading.level?.value == null || rest?.value == null) return null;
  return reading.level.value - rest.value;
}

export function seriesOf(phase: Phase | null, rest: Depth | null): Series {
  const readings: Drawdown[] = [];
  let doubtful = inDoubt(rest);
  let [firstLine, lastLine]: (number | null)[] = [null, null];
  for (const reading of phase?.readings ?? []) {
    const drawdown = drawdownOf(reading, rest);
    const time = reading.elapsed?.value ?? null;
    if (drawdown === null || time === null) continue;
    readings.push({ time, drawdown });
    doubtful ||= inDoubt(reading.level) || inDoubt(reading.drawdown) || inDoubt(reading.elapsed);
    firstLine ??= reading.line;
    lastLine = reading.line;
  }
  return { readings, doubtful, firstLine: firstLine ?? null, lastLine: lastLine ?? null };
}

/** Start of each pumping phase on the pumping clock, s: a new rate holds from the reading above. */
export function startsOf(phases: readonly Phase[]): number[] {
  let last = 0;
  return phases.map((phase) => {
    const start = last;
    last = phase.readings.reduce((latest, reading) => Math.max(latest, reading.elapsed?.value ?? 0), last);
    return start;
  });
}
