import { type Cell, csvText, harmless } from '../../export/csv/csv-text.ts';
import { oneLine } from '../../export/plain-text.ts';
import type { WellSummary } from '../../folder/summary.ts';
import { keys, type TextColumn, textColumns } from './columns.ts';
import type { Listed } from './listed.ts';

const widthOf = (text: string): number => [...text].length;

function padded(text: string, width: number, { numeric }: TextColumn): string {
  const blanks = ' '.repeat(Math.max(0, width - widthOf(text)));
  return numeric ? blanks + text : text + blanks;
}

/** Wells in columns that line up in a terminal. */
export function listText(wells: readonly Listed[]): string {
  const rows = [
    textColumns.map(({ title }) => title),
    ...wells.map((well) => textColumns.map(({ text }) => oneLine(text(well)))),
  ];
  const widths = textColumns.map((_, at) => rows.reduce((most, row) => Math.max(most, widthOf(row[at] ?? '')), 0));
  const line = (row: readonly string[]): string =>
    textColumns
      .map((each, at) => padded(row[at] ?? '', widths[at] ?? 0, each))
      .join('  ')
      .trimEnd();
  return rows.map((row) => `${line(row)}\n`).join('');
}

const rowsOf = (wells: readonly Listed[]): readonly (readonly Cell[])[] =>
  wells.map((well) => keys.map(({ value }) => value(well)));

export const listCsv = (wells: readonly Listed[]): string =>
  csvText([keys.map(({ heading }) => heading), ...rowsOf(wells)]);

/** Cells before which the CSV has an apostrophe. */
export const madeHarmless = (wells: readonly Listed[]): number =>
  rowsOf(wells)
    .flat()
    .filter((cell) => typeof cell === 'string' && harmless(cell) !== cell).length;

const metres = (value: number | null): number | null => (value === null ? null : Number(value.toFixed(4)));

const stringJson = ({ kind, top, bottom, outside }: WellSummary['strings'][number]) => ({
  kind,
  top_m: metres(top),
  bottom_m: metres(bottom),
  outside_diameter_m: metres(outside),
});

/** What JSON and GeoJSON say of a well beside its place. Units stand in the names; what is unknown is null. */
export const factsJson = ({ file, summary }: Listed) => ({
  id: summary.id,
  file,
  location: summary.location,
  owner: summary.owner,
  depth_m: metres(summary.depth),
  strings: summary.strings.map(stringJson),
  static_level_m: metres(summary.level?.depth ?? null),
  static_level_date: summary.level?.date ?? null,
  yield_m3_per_s: summary.yield === null ? null : Number(summary.yield.rate.toPrecision(6)),
  yield_basis: summary.yield?.basis ?? null,
  finished: summary.finished,
  findings: summary.findings,
  due: summary.due,
});

const placeJson = ({ place }: WellSummary) =>
  place && { latitude: place.latitude, longitude: place.longitude, datum: place.datum?.name ?? null };

export const listJson = (wells: readonly Listed[]): string =>
  `${JSON.stringify(
    wells.map((well) => ({ ...factsJson(well), place: placeJson(well.summary) })),
    null,
    2,
  )}\n`;
