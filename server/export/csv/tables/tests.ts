import type { ObservedWell, Phase, Reading, Test, WellLog } from '../../../model/log.ts';
import { type CsvTable, depth, measure, moment, period, remarkAndLine, table, text, word } from '../column.ts';

interface ReadingRow extends Reading {
  readonly test: number;
  readonly well: string;
  readonly phase: string;
  readonly phaseRate: Phase['rate'];
}

const readingsOf = (test: number, well: string, phases: readonly Phase[]): ReadingRow[] =>
  phases.flatMap(({ kind, rate, readings }) =>
    readings.map((each) => ({ ...each, test, well, phase: kind, phaseRate: rate })),
  );

const observedName = ({ name }: ObservedWell): string => name?.text ?? 'observed';

const readingRows = ({ tests }: WellLog): ReadingRow[] =>
  tests.flatMap(({ number: test, phases, observed }) => [
    ...readingsOf(test, 'pumped', phases),
    ...observed.flatMap((each) => readingsOf(test, observedName(each), each.phases)),
  ]);

const observedRows = ({ tests }: WellLog): (ObservedWell & { test: number })[] =>
  tests.flatMap(({ number: test, observed }) => observed.map((each) => ({ ...each, test })));

/** The tests and their readings. */
export const testTables = (log: WellLog): CsvTable[] => [
  table('tests', log.tests, [
    { title: 'test', of: (row) => row.number },
    word('method', (row) => row.method),
    ...measure<Test>('rate', 'L_per_s', (row) => row.rate),
    ...depth<Test>((row) => row.intake, 'intake'),
    ...depth<Test>((row) => row.stem, 'stem'),
    ...measure<Test>('duration', 'h', (row) => row.duration),
    ...period<Test>('start', (row) => row.start),
    ...remarkAndLine<Test>(),
  ]),
  table('observed', observedRows(log), [
    { title: 'test', of: (row) => row.test },
    text('name', (row) => row.name?.text),
    ...depth<ObservedWell>((row) => row.distance, 'distance'),
    ...remarkAndLine<ObservedWell>(),
  ]),
  table('readings', readingRows(log), [
    { title: 'test', of: (row) => row.test },
    text('well', (row) => row.well),
    text('phase', (row) => row.phase),
    ...measure<ReadingRow>('phase_rate', 'L_per_s', (row) => row.phaseRate),
    ...measure<ReadingRow>('elapsed', 'min', (row) => row.elapsed),
    moment('clock', (row) => row.clock),
    ...depth<ReadingRow>((row) => row.level, 'level'),
    ...depth<ReadingRow>((row) => row.drawdown, 'drawdown'),
    ...measure<ReadingRow>('rate', 'L_per_s', (row) => row.rate),
    ...remarkAndLine<ReadingRow>(),
  ]),
];
