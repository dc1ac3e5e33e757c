import type { Record as WellRecord } from '../../record/record.ts';
import { figureValue } from '../figure-value.ts';
import type { ExportContext, Exported, ExportFormat } from '../format.ts';
import { fitsEveryEdge, stepFor } from './step.ts';
import { type Track, tracksOf } from './tracks.ts';

/** What stands for a value that is not known; LAS 2.0 (Canadian Well Logging Society, 1992) has the same in its examples. */
const nothing = -999.25;

/* A header line ends at its line break, its unit at the first blank, its value at the last colon. */
const oneLine = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]+/g, ' ')
    .replaceAll(':', ' ')
    .replace(/ +/g, ' ')
    .trim();

const headLine = (mnemonic: string, unit: string, value: string, title: string): string =>
  ` ${`${mnemonic}.${unit}`.padEnd(12)} ${value.padEnd(28)} : ${title}`;

const depthText = (depth: number): string => (depth + 0).toFixed(2);

interface Rows {
  readonly start: number;
  readonly stop: number;
  readonly step: number;
}

function rowsOf(tracks: readonly Track[]): Rows {
  const edges = edgesOf(tracks);
  const step = stepFor(edges);
  const start = Math.floor(least(edges) / step + 1e-6) * step;
  const stop = Math.ceil(most(edges) / step - 1e-6) * step;
  return { start, stop, step };
}

const edgesOf = (tracks: readonly Track[]): number[] =>
  tracks.flatMap(({ stretches }) => stretches.flatMap(({ top, bottom }) => [top, bottom]));
const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
const most = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);

function wellSection({ log }: WellRecord, { name, today }: ExportContext, { start, stop, step }: Rows): string[] {
  const { header } = log;
  const fact = (key: string): string => oneLine(header[key]?.text ?? '');
  return [
    '~Well information',
    headLine('STRT', 'M', depthText(start), 'first depth, below ground'),
    headLine('STOP', 'M', depthText(stop), 'last depth, below ground'),
    headLine('STEP', 'M', depthText(step), 'step'),
    headLine('NULL', '', String(nothing), 'no value'),
    headLine('COMP', '', fact('owner'), 'owner'),
    headLine('WELL', '', fact('well') || oneLine(name), 'well'),
    headLine('FLD', '', fact('site'), 'site'),
    headLine('LOC', '', fact('location'), 'location'),
    headLine('PROV', '', '', 'province'),
    headLine('SRVC', '', fact('contractor'), 'contractor'),
    headLine('DATE', '', oneLine(log.finished?.date ?? today), log.finished?.date ? 'finished' : 'written'),
    headLine('UWI', '', fact('tag'), 'tag of the well'),
  ];
}

const curveSection = (tracks: readonly Track[]): string[] => [
  '~Curve information',
  headLine('DEPT', 'M', '', 'depth below ground'),
  ...tracks.map(({ mnemonic, unit, title }) => headLine(mnemonic, unit, '', title)),
];

function parameterSection(record: WellRecord): string[] {
  const rows: readonly (readonly [string, string, number | null, string])[] = [
    ['EGL', 'M', record.log.ground?.elevation?.value ?? null, 'elevation of the ground'],
    ['LATI', 'DEG', figureValue(record, 'place.latitude'), 'latitude'],
    ['LONG', 'DEG', figureValue(record, 'place.longitude'), 'longitude'],
    ['SWL', 'M', figureValue(record, 'water.static-level'), 'static level below ground'],
    ['TDD', 'M', record.log.totalDepth, 'depth of the hole'],
  ];
  const known = rows.flatMap(([mnemonic, unit, value, title]) =>
    value === null ? [] : [headLine(mnemonic, unit, String(Number(value.toFixed(6)) + 0), title)],
  );
  return known.length === 0 ? [] : ['~Parameter information', ...known];
}

const dataSection = (tracks: readonly Track[], rows: Rows): string[] => {
  const columns = tracks.map((track) => columnOf(track, rows));
  return [
    `~A ${['DEPT', ...tracks.map(({ mnemonic }) => mnemonic)]
      .map((name) => name.padStart(11))
      .join(' ')
      .slice(3)}`,
    ...depthsOf(rows).map((depth, at) =>
      [depthText(depth), ...columns.map((column) => valueText(column[at]))].map((cell) => cell.padStart(11)).join(' '),
    ),
  ];
};

const depthsOf = ({ start, stop, step }: Rows): number[] =>
  Array.from({ length: Math.round((stop - start) / step) + 1 }, (_, at) => start + at * step);

/** Values by row. A stretch holds from its top, down to and without its base; of two that overlap the first holds. */
function columnOf({ stretches }: Track, { start, stop, step }: Rows): (number | undefined)[] {
  const column: (number | undefined)[] = new Array(Math.round((stop - start) / step) + 1).fill(undefined);
  for (const { top, bottom, value } of stretches.toReversed())
    column.fill(value, Math.ceil((top - start) / step - 1e-6), Math.ceil((bottom - start) / step - 1e-6));
  return column;
}

const valueText = (value: number | undefined): string => (value === undefined ? String(nothing) : value.toFixed(3));

const asciiLeft = ({ log }: WellRecord): string[] =>
  Object.values(log.header).some(({ text }) => /[^\x20-\x7e]/.test(text))
    ? ['LAS is plain ASCII: accents and other letters of the header were taken off.']
    : [];

function leftOf(record: WellRecord, tracks: readonly Track[], { step }: Rows): string[] {
  return [
    ...asciiLeft(record),
    ...(fitsEveryEdge(edgesOf(tracks), step)
      ? []
      : [`Edges of stretches between two rows fall on rows ${step} m apart.`]),
    'LAS carries tracks against depth only: the descriptions, the strings, the fills, the water and the tests are not in it.',
  ];
}

const makeLas: ExportFormat['make'] = (record, context): Exported => {
  const tracks = tracksOf(record);
  if (tracks.length === 0) return { files: [], left: ['The log has nothing against depth that LAS could carry.'] };
  const rows = rowsOf(tracks);
  const lines = [
    '~Version information',
    headLine('VERS', '', '2.0', 'CWLS log ASCII standard, version 2.0'),
    headLine('WRAP', '', 'NO', 'one line a depth'),
    ...wellSection(record, context, rows),
    ...curveSection(tracks),
    ...parameterSection(record),
    ...dataSection(tracks, rows),
  ];
  return {
    files: [{ name: `${context.name}.las`, content: `${lines.join('\r\n')}\r\n` }],
    left: leftOf(record, tracks, rows),
  };
};

export const lasFormat: ExportFormat = {
  id: 'las',
  title: 'Tracks against depth (LAS 2.0)',
  extension: 'las',
  many: false,
  make: makeLas,
};
