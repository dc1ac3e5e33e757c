import type { WellLog } from '../../model/log.ts';
import {
  depthText,
  fieldText,
  intervalText,
  listed,
  measureText,
  momentText,
  unitName,
  wordsText,
  wordText,
} from '../words.ts';
import { figures, type Table, tableOf, words } from './table.ts';

/** Waters and gas as they were found. */
const foundTables = (log: WellLog, unit: string): Table[] => [
  ...tableOf(`Water found, depths in ${unitName(unit)} below ground`, log.water.found, [
    figures('Depth', (each) =>
      each.interval === null ? depthText(each.depth, unit) : intervalText(each.interval, unit),
    ),
    words('Kind', (each) => wordsText(each.kinds)),
    figures('Rate', (each) => measureText(each.rate) || '?'),
    words('The rate is', (each) =>
      each.rate === null ? '' : each.rateMeans === 'total' ? 'all down to here' : 'what this depth adds',
    ),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
  ...tableOf('Gas', log.water.gas, [
    figures('Depth', (each) => depthText(each.depth, unit)),
    words('Kind', (each) => wordsText(each.kinds) || '?'),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
];

const levelTables = (log: WellLog, unit: string): Table[] =>
  tableOf(`Water levels, in ${unitName(unit)} below ground where no datum is named`, log.water.levels, [
    figures('Level', (each) => depthText(each.level, unit)),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]);

const qualityTables = (log: WellLog, unit: string): Table[] => [
  ...tableOf('Quality of the water', log.water.quality, [
    figures('Depth', (each) => (each.depth === null ? '' : depthText(each.depth, unit))),
    words('Noticed', (each) => wordsText(each.kinds)),
    words('Measured', (each) =>
      listed(each.parameters.map(({ parameter, value }) => `${wordText(parameter)} ${measureText(value)}`)),
    ),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
  ...tableOf('Flow at surface', log.water.flowing, [
    figures('Rate', (each) => measureText(each.rate) || '?'),
    figures('Shut-in', (each) => measureText(each.shutIn)),
    words('Control', (each) => wordsText(each.control)),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
];

/** Water found, levels, quality and flow. */
export const waterTables = (log: WellLog): Table[] => {
  const unit = log.units.depth;
  return [...foundTables(log, unit), ...levelTables(log, unit), ...qualityTables(log, unit)];
};
