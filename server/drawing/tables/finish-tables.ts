import type { WellLog } from '../../model/log.ts';
import {
  depthText,
  depthWithUnit,
  fieldText,
  intervalText,
  listed,
  measureText,
  momentText,
  wordsText,
  wordText,
} from '../words.ts';
import { fillTable } from './string-tables.ts';
import { figures, type Table, tableOf, words } from './table.ts';

const treatmentTables = (log: WellLog, unit: string): Table[] => [
  ...tableOf('Development', log.developments, [
    words('Method', (each) => wordsText(each.methods) || '?'),
    figures('Time', (each) => measureText(each.time)),
    figures('Rate', (each) => measureText(each.rate)),
    figures('Sand', (each) => measureText(each.sand)),
    words('Result', (each) => wordsText(each.results)),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
  ...tableOf('Hydraulic fracturing', log.hydrofractures, [
    figures('Depth', (each) => intervalText(each.interval, unit)),
    figures('Pressure', (each) => measureText(each.pressure)),
    figures('Yield before', (each) => measureText(each.before)),
    figures('Yield after', (each) => measureText(each.after)),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
];

/** Development, fracturing and disinfection. */
export const treatmentTablesOf = (log: WellLog): Table[] => [
  ...treatmentTables(log, log.units.depth),
  ...tableOf('Disinfection', log.disinfections, [
    figures('Strength', (each) => measureText(each.strength) || '?'),
    figures('Contact time', (each) => measureText(each.contact) || '?'),
    words('Product', (each) =>
      listed([wordText(each.product), measureText(each.productStrength), measureText(each.amount)]),
    ),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
];

/** The pump and the cap. */
export const equipmentTables = (log: WellLog): Table[] => [
  ...tableOf('Pump', log.pumps, [
    words('Kind', (each) => wordsText(each.kinds) || '?'),
    figures('Power', (each) => measureText(each.power)),
    figures('Set at', (each) => (each.set === null ? '' : depthWithUnit(each.set, log.units.depth))),
    figures('Rate', (each) => measureText(each.rate)),
    words('Date', (each) => momentText(each.date)),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
  ...tableOf('Cap', log.caps, [
    words('Kind', (each) => wordsText(each.kinds) || '?'),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
];

/** How the hole was sealed for good. */
export const abandonmentTables = (log: WellLog): Table[] =>
  log.abandonments.flatMap((abandonment) => {
    const about = listed([momentText(abandonment.date), fieldText(abandonment.reason)]);
    return fillTable(`Abandonment${about === '' ? '' : `, ${about}`}`, abandonment.fills, log.units.depth);
  });

/** Notes and photographs. */
export const noteTables = (log: WellLog): Table[] => [
  ...tableOf(
    'Notes',
    log.notes.map(({ text, span }) => ({ line: span.line, text })),
    [words('Note', (each) => each.text)],
  ),
  ...tableOf('Photographs', log.photos, [
    words('File', (each) => fieldText(each.file) || '?'),
    figures('Depth', (each) => (each.depth === null ? '' : depthText(each.depth, log.units.depth))),
    words('Remark', (each) => fieldText(each.remark)),
  ]),
];

const questionKinds = { unknown: 'not recorded', doubtful: 'to confirm', approximate: 'about' } as const;

/** Everything that the notes leave open. */
export const questionTables = (log: WellLog): Table[] =>
  tableOf(
    'Questions for the crew',
    log.questions.map((each) => ({ ...each, line: each.span.line })),
    [words('About', (each) => each.what), words('State', (each) => questionKinds[each.kind])],
  );
