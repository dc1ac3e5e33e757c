import type {
  DrilledInterval,
  Drilling,
  Existing,
  HoleEntry,
  Lost,
  Samples,
  Stratum,
  WellLog,
} from '../../../model/log.ts';
import {
  type Column,
  type CsvTable,
  depth,
  interval,
  measure,
  moment,
  number,
  period,
  remarkAndLine,
  table,
  text,
  word,
  words,
} from '../column.ts';

interface OfRun {
  readonly run: number;
}

const run: Column<OfRun> = { title: 'run', of: (row) => row.run };

/** Rows of the runs of drilling, with the number of the run. */
const ofRuns = <Part>({ drilling }: WellLog, parts: (run: Drilling) => readonly Part[]): (Part & OfRun)[] =>
  drilling.flatMap((each, at) => parts(each).map((part) => ({ ...part, run: at + 1 })));

const otherMaterials = (materials: readonly { readonly name: string; readonly amount: string | null }[]): string =>
  materials.flatMap(({ name, amount }) => (amount === null ? [] : [`${amount} ${name}`])).join('; ');

/** The hole, the ground and how it was drilled. */
export const groundTables = (log: WellLog): CsvTable[] => [
  table('hole', log.hole, [
    ...interval<HoleEntry>((row) => row.interval),
    ...measure<HoleEntry>('diameter', 'mm', (row) => row.diameter),
    words('methods', (row) => row.methods),
    ...measure<HoleEntry>('reamed_from', 'mm', (row) => row.reamedFrom),
    moment('date', (row) => row.date),
    ...remarkAndLine<HoleEntry>(),
  ]),
  table('strata', log.strata, [
    ...interval<Stratum>((row) => row.interval),
    text('description', (row) => row.description),
    text('principal', (row) => row.principal?.name),
    text('class', (row) => row.ground?.class),
    number('fgdc_pattern', '1', (row) => row.ground?.fgdc),
    text('other_materials', (row) => otherMaterials(row.materials)),
    text('colours', (row) => row.colours.join('; ')),
    words('qualities', (row) => row.qualities),
    text('names', (row) => row.names.join('; ')),
    ...remarkAndLine<Stratum>(),
  ]),
  table(
    'drilling',
    ofRuns(log, ({ intervals }) => intervals),
    [
      run,
      ...interval<DrilledInterval>((row) => row.interval),
      ...measure<DrilledInterval>('time', 'min', (row) => row.time),
      words('flush', (row) => row.flush),
      ...measure<DrilledInterval>('flush_rate', 'L_per_s', (row) => row.flushRate),
      ...measure<DrilledInterval>('pressure', 'kPa', (row) => row.pressure),
      ...measure<DrilledInterval>('bit', 'mm', (row) => row.bit),
      words('methods', (row) => row.methods),
      ...period<DrilledInterval>('when', (row) => row.when),
      ...remarkAndLine<DrilledInterval>(),
    ],
  ),
  table('existing', log.existing, [
    ...interval<Existing>((row) => row.interval),
    ...measure<Existing>('diameter', 'mm', (row) => row.diameter),
    number('year', '1', (row) => row.year),
    text('record', (row) => row.record?.text),
    ...remarkAndLine<Existing>(),
  ]),
  table(
    'runs',
    log.drilling.map((each, at) => ({ ...each, run: at + 1 })),
    [
      run,
      words('flush', (row) => row.flush),
      ...measure<Drilling>('air_rate', 'L_per_s', (row) => row.airRate),
      ...measure<Drilling>('pressure', 'kPa', (row) => row.pressure),
      ...measure<Drilling>('pipe', 'mm', (row) => row.pipe),
      ...measure<Drilling>('bit', 'mm', (row) => row.bit),
      words('methods', (row) => row.methods),
      ...remarkAndLine<Drilling>(),
    ],
  ),
  table(
    'losses',
    ofRuns(log, ({ lost }) => lost),
    [
      run,
      ...interval<Lost>((row) => row.interval),
      ...depth<Lost>((row) => row.depth),
      word('extent', (row) => row.extent),
      ...remarkAndLine<Lost>(),
    ],
  ),
  table(
    'samples',
    ofRuns(log, ({ samples }) => samples),
    [
      run,
      ...interval<Samples>((row) => row.interval),
      ...depth<Samples>((row) => row.every, 'every'),
      ...remarkAndLine<Samples>(),
    ],
  ),
];
