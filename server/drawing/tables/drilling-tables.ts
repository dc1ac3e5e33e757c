import type { Drilling, WellLog } from '../../model/log.ts';
import {
  depthText,
  depthWithUnit,
  fieldText,
  intervalText,
  listed,
  measureText,
  periodText,
  unitName,
  wordsText,
  wordText,
} from '../words.ts';
import { figures, type Table, tableOf, words } from './table.ts';

const headText = (drilling: Drilling): string =>
  listed([
    wordsText(drilling.flush),
    wordsText(drilling.methods),
    measureText(drilling.airRate),
    measureText(drilling.pressure),
    drilling.pipe === null ? '' : `pipe ${measureText(drilling.pipe)}`,
    drilling.bit === null ? '' : `bit ${measureText(drilling.bit)}`,
  ]);

const headTable = (log: WellLog): Table[] =>
  tableOf<Drilling>(
    'The rig',
    log.drilling.filter((each) => headText(each) !== ''),
    [words('Drilled with', (each) => headText(each) || '?'), words('Remark', (each) => fieldText(each.remark))],
  );

const intervalTable = (log: WellLog): Table[] => {
  const unit = log.units.depth;
  return tableOf(
    `Drilling, depths in ${unitName(unit)} below ground`,
    log.drilling.flatMap((drilling) => drilling.intervals),
    [
      figures('Depth', (each) => intervalText(each.interval, unit)),
      figures('Time', (each) => measureText(each.time) || '?'),
      words('Flush', (each) => listed([wordsText(each.flush), measureText(each.flushRate)])),
      figures('Pressure', (each) => measureText(each.pressure)),
      figures('Bit', (each) => measureText(each.bit)),
      words('Method', (each) => wordsText(each.methods)),
      words('When', (each) => periodText(each.when)),
      words('Remark', (each) => fieldText(each.remark)),
    ],
  );
};

/** How the hole was drilled, where returns were lost, what samples were taken, and the shifts. */
export const drillingTables = (log: WellLog): Table[] => {
  const unit = log.units.depth;
  return [
    ...headTable(log),
    ...intervalTable(log),
    ...tableOf(
      'Returns lost',
      log.drilling.flatMap((drilling) => drilling.lost),
      [
        figures('Depth', (each) =>
          each.interval === null ? depthText(each.depth, unit) : intervalText(each.interval, unit),
        ),
        words('How much', (each) => wordText(each.extent)),
        words('Remark', (each) => fieldText(each.remark)),
      ],
    ),
    ...tableOf(
      'Samples',
      log.drilling.flatMap((drilling) => drilling.samples),
      [
        figures('Depth', (each) => intervalText(each.interval, unit)),
        words('Every', (each) => (each.every === null ? '' : depthWithUnit(each.every, unit))),
        words('Remark', (each) => fieldText(each.remark)),
      ],
    ),
    ...tableOf('Shifts', log.shifts, [
      words('Hours', (each) => periodText(each.hours) || '?'),
      figures('Drilled', (each) => intervalText(each.drilled, unit)),
      words('Crew', (each) => fieldText(each.crew)),
      words('Weather', (each) => listed([wordsText(each.weather), measureText(each.temperature)])),
      words('Remark', (each) => fieldText(each.remark)),
    ]),
  ];
};
