import type {
  Abandonment,
  AtDepth,
  Development,
  Disinfection,
  Hydrofracture,
  Pump,
  WellLog,
} from '../../../model/log.ts';
import {
  type Column,
  type CsvTable,
  depth,
  interval,
  measure,
  moment,
  remarkAndLine,
  table,
  text,
  word,
  words,
} from '../column.ts';

import { fillColumns } from './fill-columns.ts';

const abandonmentNumber: Column<{ readonly abandonment: number }> = {
  title: 'abandonment',
  of: (row) => row.abandonment,
};

/** Development, pump, cap, disinfection and abandonment. */
export const finishTables = (log: WellLog): CsvTable[] => [
  table('development', log.developments, [
    words('methods', (row) => row.methods),
    ...measure<Development>('time', 'h', (row) => row.time),
    ...measure<Development>('rate', 'L_per_s', (row) => row.rate),
    text('sand_written', (row) => row.sand?.written),
    words('results', (row) => row.results),
    moment('date', (row) => row.date),
    ...remarkAndLine<Development>(),
  ]),
  table('pumps', log.pumps, [
    words('kinds', (row) => row.kinds),
    text('power_written', (row) => row.power?.written),
    ...depth<Pump>((row) => row.set, 'set'),
    ...measure<Pump>('rate', 'L_per_s', (row) => row.rate),
    moment('date', (row) => row.date),
    ...remarkAndLine<Pump>(),
  ]),
  table('disinfection', log.disinfections, [
    text('strength_written', (row) => row.strength?.written),
    ...measure<Disinfection>('contact', 'h', (row) => row.contact),
    word('product', (row) => row.product),
    text('product_strength_written', (row) => row.productStrength?.written),
    text('amount_written', (row) => row.amount?.written),
    moment('date', (row) => row.date),
    ...remarkAndLine<Disinfection>(),
  ]),
  table(
    'abandonment',
    log.abandonments.flatMap(({ fills, number: abandonment }) => fills.map((each) => ({ ...each, abandonment }))),
    [abandonmentNumber, ...fillColumns],
  ),
  table('hydrofracturing', log.hydrofractures, [
    ...interval<Hydrofracture>((row) => row.interval),
    ...measure<Hydrofracture>('pressure', 'kPa', (row) => row.pressure),
    ...measure<Hydrofracture>('before', 'L_per_s', (row) => row.before),
    ...measure<Hydrofracture>('after', 'L_per_s', (row) => row.after),
    moment('date', (row) => row.date),
    ...remarkAndLine<Hydrofracture>(),
  ]),
  table('caps', log.caps, [
    ...depth<AtDepth>((row) => row.depth),
    words('kinds', (row) => row.kinds),
    ...remarkAndLine<AtDepth>(),
  ]),
  table('abandonments', log.abandonments, [
    { title: 'abandonment', of: (row) => row.number },
    moment('date', (row) => row.date),
    text('reason', (row) => row.reason?.text),
    ...remarkAndLine<Abandonment>(),
  ]),
];
