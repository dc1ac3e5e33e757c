import type { WellLog } from '../../model/log.ts';
import {
  depthText,
  fieldText,
  intervalText,
  measureText,
  momentText,
  numberText,
  unitName,
  wordsText,
} from '../words.ts';
import { figures, type Table, tableOf, words } from './table.ts';

/** The hole as bored, and the old hole where one was deepened. */
export const holeTables = (log: WellLog): Table[] => {
  const unit = log.units.depth;
  return [
    ...tableOf(`The hole, depths in ${unitName(unit)} below ground`, log.hole, [
      figures('Depth', (each) => intervalText(each.interval, unit)),
      figures('Diameter', (each) => measureText(each.diameter) || '?'),
      words('Method', (each) => wordsText(each.methods)),
      words('Reamed from', (each) => measureText(each.reamedFrom)),
      words('Date', (each) => momentText(each.date)),
      words('Remark', (each) => fieldText(each.remark)),
    ]),
    ...tableOf('The old hole', log.existing, [
      figures('Depth', (each) => intervalText(each.interval, unit)),
      figures('Diameter', (each) => measureText(each.diameter)),
      words('Year', (each) => (each.year === null ? '' : numberText(each.year, 0))),
      words('Record', (each) => fieldText(each.record)),
      words('Remark', (each) => fieldText(each.remark)),
    ]),
  ];
};

/** The layers in words. */
export const strataTables = (log: WellLog): Table[] => {
  const unit = log.units.depth;
  return tableOf(`Strata, depths in ${unitName(unit)} below ground`, log.strata, [
    figures('Depth', (each) => intervalText(each.interval, unit)),
    words('Description', (each) => each.description || 'Not described'),
    words('At', (each) => each.at.map((depth) => depthText(depth, unit)).join(', ')),
    words('Remark', (each) => fieldText(each.remark)),
  ]);
};
