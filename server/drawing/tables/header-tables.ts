import type { TextField, WellLog } from '../../model/log.ts';
import { coordinatesText } from '../coordinates.ts';
import {
  capital,
  depthWithUnit,
  fieldText,
  listed,
  measureText,
  momentText,
  termText,
  unitName,
  wordText,
} from '../words.ts';
import { type Fact, factTable, type Table, tableOf, words } from './table.ts';

/* Header lines in the order in which a well record is filled in: common practice, no source. */
const headerOrder = ['well', 'tag', 'permit', 'owner', 'site', 'location', 'contractor', 'licence', 'technician'];

const headerFact = (keyword: string, field: TextField | undefined): Fact[] =>
  field === undefined ? [] : [{ line: field.span.line, name: capital(keyword), text: fieldText(field) }];

function headerFacts({ header }: WellLog): Fact[] {
  const others = Object.keys(header)
    .filter((keyword) => !headerOrder.includes(keyword))
    .sort();
  return [...headerOrder, ...others].flatMap((keyword) =>
    headerFact(keyword, Object.hasOwn(header, keyword) ? header[keyword] : undefined),
  );
}

function placeText({ place }: WellLog): string {
  const accuracy = place?.accuracy == null ? '' : `within ${measureText(place.accuracy)}`;
  return listed([coordinatesText(place), accuracy]);
}

function groundText({ ground }: WellLog): string {
  if (ground === null) return '';
  const accuracy = ground.accuracy === null ? '' : `within ${measureText(ground.accuracy)}`;
  return listed([measureText(ground.elevation) || '?', wordText(ground.datum), accuracy]);
}

const moments = (log: WellLog): Fact[] =>
  (['began', 'finished', 'reported'] as const).map((name) => ({
    line: log[name]?.span.line ?? null,
    name: capital(name),
    text: momentText(log[name]),
  }));

const unitsText = ({ units }: WellLog): string =>
  listed([
    `depths in ${unitName(units.depth)}`,
    `diameters in ${unitName(units.diameter)}`,
    units.gallon === null ? '' : `gallon: ${unitName(units.gallon)}`,
  ]);

const otherFacts = (log: WellLog): Fact[] => [
  { line: log.place?.line ?? null, name: 'Place', text: placeText(log) },
  { line: log.ground?.line ?? null, name: 'Ground elevation', text: groundText(log) },
  { line: log.uses[0]?.span.line ?? null, name: 'Use', text: listed(log.uses.map(termText)) },
  { line: log.status?.span.line ?? null, name: 'Status', text: termText(log.status) },
  ...moments(log),
  { line: null, name: 'Units', text: unitsText(log) },
];

/** Who, where, when. */
export const headerTables = (log: WellLog): Table[] => [
  ...factTable('The well', [...headerFacts(log), ...otherFacts(log)]),
  ...tableOf('Distances from sources of contamination', log.distances, [
    words('Source', (each) => wordText(each.source)),
    words('Distance', (each) => depthWithUnit(each.distance, log.units.depth)),
  ]),
];
