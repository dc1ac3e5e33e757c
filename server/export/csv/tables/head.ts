import { momentText, termText } from '../../../drawing/words.ts';
import type { Shift, WellLog } from '../../../model/log.ts';
import { type CsvTable, depth, interval, period, remarkAndLine, table, text, word, words } from '../column.ts';

interface Fact {
  readonly name: string;
  readonly value: string;
}

function placeFacts(place: WellLog['place']): Fact[] {
  if (place === null) return [];
  const { latitude, longitude, utm } = place;
  const facts = utm
    ? { 'UTM zone': `${utm.zone}${utm.hemisphere}`, 'UTM easting': utm.easting, 'UTM northing': utm.northing }
    : { latitude, longitude };
  return Object.entries(facts).map(([name, value]) => ({ name, value: String(value ?? '?') }));
}

function headFacts({
  header,
  units,
  packs,
  notes,
  uses,
  status,
  place,
  ground,
  began,
  finished,
  reported,
}: WellLog): Fact[] {
  const moments = { began, finished, reported };
  return [
    ...Object.entries(header).map(([name, field]) => ({ name, value: field.text })),
    { name: 'units', value: [units.depth, units.diameter, units.gallon ?? ''].filter(Boolean).join(' ') },
    ...notes.map((note) => ({ name: 'note', value: note.text })),
    ...packs.map((pack) => ({ name: 'rules', value: pack.text })),
    ...uses.map((use) => ({ name: 'use', value: termText(use) })),
    ...(status ? [{ name: 'status', value: termText(status) }] : []),
    ...placeFacts(place),
    ...(place?.datum ? [{ name: 'place datum', value: place.datum.name }] : []),
    ...(place?.accuracy ? [{ name: 'place accuracy', value: place.accuracy.written }] : []),
    ...(ground?.elevation ? [{ name: 'ground elevation', value: ground.elevation.written }] : []),
    ...(ground?.accuracy ? [{ name: 'ground accuracy', value: ground.accuracy.written }] : []),
    ...(ground?.datum ? [{ name: 'ground datum', value: ground.datum.name }] : []),
    ...Object.entries(moments).flatMap(([name, each]) => (each === null ? [] : [{ name, value: momentText(each) }])),
  ];
}

/** The well, its place and its days. */
export const headTables = (log: WellLog): CsvTable[] => [
  table('well', headFacts(log), [text('fact', ({ name }) => name), text('value', ({ value }) => value)]),
  table('distances', log.distances, [
    word('source', (row) => row.source),
    ...depth<(typeof log.distances)[number]>((row) => row.distance, 'distance'),
    ...remarkAndLine<(typeof log.distances)[number]>(),
  ]),
  table('photos', log.photos, [
    ...depth<WellLog['photos'][number]>((row) => row.depth),
    text('file', (row) => row.file?.text),
    ...remarkAndLine<WellLog['photos'][number]>(),
  ]),
  table('shifts', log.shifts, [
    ...period<Shift>('hours', (row) => row.hours),
    ...interval<Shift>((row) => row.drilled),
    text('crew', (row) => row.crew?.text),
    words('weather', (row) => row.weather),
    text('temperature_written', (row) => row.temperature?.written),
    ...remarkAndLine<Shift>(),
  ]),
];
