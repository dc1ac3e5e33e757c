import type { AtDepth, Cut, Interval, PipeSize, PipeString, Screen, WellLog } from '../../../model/log.ts';
import {
  type Column,
  type CsvTable,
  depth,
  interval,
  measure,
  moment,
  number,
  remarkAndLine,
  table,
  text,
  word,
  words,
} from '../column.ts';

import { yesNo } from '../yes-no.ts';
import { fillColumns } from './fill-columns.ts';

/** Rows of what hangs on a string, with the number of the string. */
const ofStrings = <Part>(
  { strings }: WellLog,
  parts: (string: PipeString) => readonly Part[],
): (Part & { string: number })[] =>
  strings.flatMap((string) => parts(string).map((part) => ({ ...part, string: string.number })));

const stringNumber: Column<{ string: number }> = { title: 'string', of: (row) => row.string };

const pipe = <Row>(of: (row: Row) => PipeSize): Column<Row>[] => [
  number('outside_diameter', 'mm', (row) => of(row).outsideDiameter),
  number('wall', 'mm', (row) => of(row).wallThickness),
  number('inside_diameter', 'mm', (row) => of(row).insideDiameter),
  text('outside_diameter_written', (row) => of(row).outside?.written),
  text('wall_written', (row) => of(row).wall?.written),
  text('inside_diameter_written', (row) => of(row).inside?.written),
  text('coupling_written', (row) => of(row).coupling?.written),
  text('size_known_by', (row) => of(row).basis),
  text('nominal', (row) => of(row).nominal?.written),
  ...measure<Row>('schedule', '1', (row) => of(row).schedule),
  ...measure<Row>('standard_dimension_ratio', '1', (row) => of(row).sdr),
];

const stretchText = ({ top, bottom }: Interval): string => `${top?.written ?? '?'} - ${bottom?.written ?? '?'}`;

const stringColumns: readonly Column<PipeString>[] = [
  { title: 'string', of: (row) => row.number },
  text('kind', (row) => row.kind),
  ...interval<PipeString>((row) => row.interval),
  word('material', (row) => row.material),
  ...pipe<PipeString>((row) => row.size),
  text('grade', (row) => row.grade?.text),
  word('joint', (row) => row.joint),
  words('states', (row) => row.states),
  text('driven', (row) => yesNo(row.driven)),
  text('temporary', (row) => yesNo(row.temporary)),
  moment('pulled', (row) => row.pulled),
  moment('set', (row) => row.set),
  ...depth<PipeString>((row) => row.shoe?.depth, 'shoe'),
  words('shoe_kinds', (row) => row.shoe?.kinds ?? []),
  text('shoe_remark', (row) => row.shoe?.remark?.text),
  text('perforated', (row) => row.perforated.map(stretchText).join('; ')),
  text('centralizers', (row) => row.centralizers?.positions.map(({ written }) => written).join('; ')),
  text('centralizers_every', (row) => row.centralizers?.every?.written),
  text('centralizers_in_set', (row) => row.centralizers?.inSet?.written),
  text('centralizers_remark', (row) => row.centralizers?.remark?.text),
  text('joints', (row) => row.joints?.lengths.map(({ count, length }) => `${count} x ${length.written}`).join('; ')),
  text('joints_remark', (row) => row.joints?.remark?.text),
  ...remarkAndLine<PipeString>(),
];

/** The strings and what hangs on them. */
export const stringTables = (log: WellLog): CsvTable[] => [
  table('strings', log.strings, stringColumns),
  table(
    'screens',
    ofStrings(log, ({ screens }) => screens),
    [
      stringNumber,
      ...interval<Screen>((row) => row.interval),
      word('material', (row) => row.material),
      ...pipe<Screen>((row) => row.size),
      ...measure<Screen>('slot', 'mm', (row) => row.slot),
      text('open_area_written', (row) => row.openArea?.written),
      words('kinds', (row) => row.kinds),
      ...remarkAndLine<Screen>(),
    ],
  ),
  table(
    'fills',
    ofStrings(log, ({ fills }) => fills),
    [stringNumber, ...fillColumns],
  ),
  table(
    'fittings',
    ofStrings(log, ({ packers, pitless }) => [
      ...packers.map((each) => ({ ...each, kind: 'packer' })),
      ...pitless.map((each) => ({ ...each, kind: 'pitless' })),
    ]),
    [
      stringNumber,
      text('kind', (row) => row.kind),
      ...depth<AtDepth>((row) => row.depth),
      words('kinds', (row) => row.kinds),
      ...remarkAndLine<AtDepth>(),
    ],
  ),
  table(
    'cuts',
    ofStrings(log, ({ cuts }) => cuts),
    [
      stringNumber,
      ...depth<Cut>((row) => row.from, 'from'),
      ...depth<Cut>((row) => row.to, 'to'),
      moment('date', (row) => row.date),
      ...remarkAndLine<Cut>(),
    ],
  ),
];
