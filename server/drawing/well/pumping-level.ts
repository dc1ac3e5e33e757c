import type { Depth, Reading, Test, WellLog } from '../../model/log.ts';
import { depthWithUnit, listed, measureText, numberText } from '../words.ts';

/** The deepest level reached while pumping in one test. */
export interface PumpingLevel {
  /** Metres below ground. */
  readonly depth: number;
  /** The depth as the notes have it. */
  readonly level: Depth | null;
  readonly line: number;
  readonly title: string;
}

interface Pumped {
  readonly reading: Reading;
  readonly rate: string;
}

const pumpedReadings = (test: Test): Pumped[] =>
  test.phases
    .filter((phase) => phase.kind === 'pumping')
    .flatMap((phase) =>
      phase.readings.map((reading) => ({ reading, rate: measureText(reading.rate ?? phase.rate ?? test.rate) })),
    );

const depthOf = ({ reading }: Pumped): number => reading.level?.value ?? Number.NEGATIVE_INFINITY;

function timeText({ elapsed }: Reading): string {
  return elapsed?.value == null || !Number.isFinite(elapsed.value)
    ? ''
    : `after ${numberText(elapsed.value / 60, 1).replace(/\.0$/, '')} min`;
}

function deepest(test: Test, unit: string): PumpingLevel[] {
  const readings = pumpedReadings(test).filter(
    (each) => Number.isFinite(depthOf(each)) && (each.reading.elapsed?.value ?? 1) > 0,
  );
  if (readings.length === 0) return [];
  const most = readings.reduce((best, each) => (depthOf(each) > depthOf(best) ? each : best));
  const { reading, rate } = most;
  const title = listed([
    `Pumping level ${depthWithUnit(reading.level, unit)}`,
    rate && `at ${rate}`,
    timeText(reading),
  ]);
  return [{ depth: depthOf(most), level: reading.level, line: reading.line, title }];
}

/** One level for each test that has readings. */
export const pumpingLevels = (log: WellLog): PumpingLevel[] =>
  log.tests.flatMap((test) => deepest(test, log.units.depth));
