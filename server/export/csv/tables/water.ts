import type { AtDepth, Flowing, Quality, WaterFound, WaterLevel, WellLog } from '../../../model/log.ts';
import { type CsvTable, depth, interval, measure, moment, remarkAndLine, table, text, words } from '../column.ts';

/** The water found, its levels and its quality. */
export const waterTables = (log: WellLog): CsvTable[] => [
  table('water', log.water.found, [
    ...depth<WaterFound>((row) => row.depth),
    ...interval<WaterFound>((row) => row.interval),
    words('kinds', (row) => row.kinds),
    ...measure<WaterFound>('rate', 'L_per_s', (row) => row.rate),
    text('rate_means', (row) => row.rateMeans),
    moment('date', (row) => row.date),
    ...remarkAndLine<WaterFound>(),
  ]),
  table('levels', log.water.levels, [
    ...depth<WaterLevel>((row) => row.level, 'level'),
    moment('date', (row) => row.date),
    ...remarkAndLine<WaterLevel>(),
  ]),
  table('quality', log.water.quality, [
    ...depth<Quality>((row) => row.depth),
    text('parameters', (row) =>
      row.parameters.map(({ parameter, value }) => `${parameter.name} ${value.written}`).join('; '),
    ),
    words('kinds', (row) => row.kinds),
    moment('date', (row) => row.date),
    ...remarkAndLine<Quality>(),
  ]),
  table('flowing', log.water.flowing, [
    ...measure<Flowing>('rate', 'L_per_s', (row) => row.rate),
    ...measure<Flowing>('shut_in', 'kPa', (row) => row.shutIn),
    words('control', (row) => row.control),
    moment('date', (row) => row.date),
    ...remarkAndLine<Flowing>(),
  ]),
  table('gas', log.water.gas, [
    ...depth<AtDepth>((row) => row.depth),
    words('kinds', (row) => row.kinds),
    ...remarkAndLine<AtDepth>(),
  ]),
];
