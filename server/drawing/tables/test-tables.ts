import type { Phase, Reading, Test, WellLog } from '../../model/log.ts';
import {
  capital,
  depthText,
  depthWithUnit,
  fieldText,
  listed,
  measureText,
  momentText,
  periodText,
  unitName,
  wordText,
} from '../words.ts';
import { type Fact, factTable, figures, type Table, tableOf, words } from './table.ts';

interface TestReading {
  readonly line: number;
  readonly phase: string;
  readonly reading: Reading;
}

const rowsOf = (phases: readonly Phase[]): TestReading[] =>
  phases.flatMap((phase) =>
    phase.readings.map((reading) => ({
      line: reading.line,
      phase: listed([capital(phase.kind), phase.kind === 'pumping' ? measureText(phase.rate) : '']),
      reading,
    })),
  );

function elapsedText({ elapsed, clock }: Reading): string {
  if (elapsed === null) return momentText(clock) || '?';
  return elapsed.unit === '' ? `${measureText(elapsed)} min` : measureText(elapsed);
}

const readingsTable = (caption: string, phases: readonly Phase[], unit: string): Table[] =>
  tableOf<TestReading>(caption, rowsOf(phases), [
    words('Phase', (each) => each.phase),
    figures('Elapsed', ({ reading }) => elapsedText(reading)),
    figures(`Level, ${unitName(unit)}`, ({ reading }) =>
      reading.level === null && reading.drawdown !== null ? '' : depthText(reading.level, unit),
    ),
    figures(`Drawdown, ${unitName(unit)}`, ({ reading }) =>
      reading.drawdown === null ? '' : depthText(reading.drawdown, unit),
    ),
    figures('Rate', ({ reading }) => measureText(reading.rate)),
    words('Remark', ({ reading }) => fieldText(reading.remark)),
  ]);

const factsOf = (test: Test, unit: string): Fact[] =>
  [
    { name: 'Method', text: wordText(test.method) },
    { name: 'Rate', text: measureText(test.rate) },
    { name: 'Intake', text: test.intake === null ? '' : depthWithUnit(test.intake, unit) },
    { name: 'Stem', text: test.stem === null ? '' : depthWithUnit(test.stem, unit) },
    { name: 'Duration', text: measureText(test.duration) },
    { name: 'Began', text: periodText(test.start) },
    { name: 'Levels from', text: test.toc ? 'top of the casing' : '' },
    { name: 'Remark', text: fieldText(test.remark) },
  ].map((fact) => ({ ...fact, line: test.line }));

const tablesOf = (test: Test, unit: string): Table[] => [
  ...factTable(`Test ${test.number}`, factsOf(test, unit)),
  ...readingsTable(`Readings of test ${test.number}`, test.phases, unit),
  ...test.observed.flatMap((well) => {
    const distance = well.distance === null ? '' : `, ${depthWithUnit(well.distance, unit)} away`;
    return readingsTable(
      `Readings of ${fieldText(well.name) || 'an observed well'} in test ${test.number}${distance}`,
      well.phases,
      unit,
    );
  }),
];

/** Each test with its readings. */
export const testTables = (log: WellLog): Table[] => log.tests.flatMap((test) => tablesOf(test, log.units.depth));
