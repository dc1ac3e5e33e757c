import type { Record as WellRecord } from '../../record/record.ts';
import type { ExportContext, Exported, ExportFormat } from '../format.ts';
import { systemOf } from './place.ts';
import { wellNode } from './well.ts';
import { xmlText } from './xml-text.ts';

const counted = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];

/** What the standard has no element for, beyond the words of the line that each part carries. */
function leftOut({ log }: WellRecord): string[] {
  const left = [
    ...counted(log.drilling.length, 'run of drilling', 'runs of drilling'),
    ...counted(
      log.strings.filter(({ centralizers }) => centralizers !== null).length,
      'list of centralizers',
      'lists of centralizers',
    ),
    ...counted(log.strings.filter(({ joints }) => joints !== null).length, 'tally of joints', 'tallies of joints'),
    ...counted(
      log.tests.reduce((sum, { phases }) => sum + phases.reduce((all, { readings }) => all + readings.length, 0), 0),
      'reading of a test',
      'readings of tests',
    ),
    ...counted(log.water.found.length, 'place where water was found', 'places where water was found'),
    ...counted(log.water.quality.length, 'analysis of the water', 'analyses of the water'),
    ...counted(log.disinfections.length, 'disinfection', 'disinfections'),
    ...counted(log.developments.length, 'development', 'developments'),
    ...counted(
      Math.max(0, log.hole.length - 1),
      'diameter of the hole above the lowest',
      'diameters of the hole above the lowest',
    ),
  ];
  return left.length === 0 ? [] : [`Not carried: ${left.join(', ')}.`];
}

function placeLeft(record: WellRecord): string[] {
  if (record.log.place === null) return ['The log gives no place.'];
  return systemOf(record) === null
    ? ['The place stands without a reference system: its datum is not named, or has no number here.']
    : [];
}

const makeGwml = (record: WellRecord, context: ExportContext): Exported => ({
  files: [{ name: `${context.name}.xml`, content: xmlText(wellNode(record, context)) }],
  left: [...placeLeft(record), ...leftOut(record)],
});

export const gwmlFormat: ExportFormat = {
  id: 'gwml',
  title: 'Well, construction and geology (OGC GroundWaterML 2.2)',
  extension: 'xml',
  many: false,
  make: makeGwml,
};
