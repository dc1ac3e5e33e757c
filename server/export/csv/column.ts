import { momentText } from '../../drawing/words.ts';
import type { Depth, Interval, Measure, Moment, Period, Word } from '../../model/log.ts';
import type { Cell } from './csv-text.ts';

/** A column of a table: its title, with the unit of its numbers, and what stands in it for a row. */
export interface Column<Row> {
  readonly title: string;
  readonly of: (row: Row) => Cell;
}

export interface CsvTable {
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/* How many of a unit go into one SI unit. */
const perSi = {
  m: 1,
  mm: 1000,
  m3: 1,
  L: 1000,
  L_per_s: 1000,
  kg: 1,
  kg_per_m3: 1,
  kPa: 1e-3,
  min: 1 / 60,
  h: 1 / 3600,
  deg: 1,
  '1': 1,
} as const;

export type CsvUnit = keyof typeof perSi;

const titled = (title: string, unit: CsvUnit): string => (unit === '1' ? title : `${title}_${unit}`);

/** A number in SI, in the unit of its column. */
export const number = <Row>(
  title: string,
  unit: CsvUnit,
  of: (row: Row) => number | null | undefined,
): Column<Row> => ({
  title: titled(title, unit),
  of: (row) => {
    const value = of(row) ?? null;
    return value === null ? null : value * perSi[unit];
  },
});

export const text = <Row>(title: string, of: (row: Row) => string | null | undefined): Column<Row> => ({
  title,
  of: (row) => of(row) ?? null,
});

type Written = Pick<Measure, 'value' | 'written'>;

/** Two columns: the value in the unit, empty where it is unknown, and the words of the notes, `?` and `~` among them. */
export const measure = <Row>(
  title: string,
  unit: CsvUnit,
  of: (row: Row) => Written | null | undefined,
): Column<Row>[] => [number(title, unit, (row) => of(row)?.value), text(`${title}_written`, (row) => of(row)?.written)];

/** Four columns: top and bottom in metres below ground, each with the words of the notes. */
export const interval = <Row>(of: (row: Row) => Interval | null | undefined): Column<Row>[] => [
  ...measure<Row>('top', 'm', (row) => of(row)?.top),
  ...measure<Row>('bottom', 'm', (row) => of(row)?.bottom),
];

export const depth = <Row>(of: (row: Row) => Depth | null | undefined, title = 'depth'): Column<Row>[] =>
  measure(title, 'm', of);

const namesOf = (words: readonly Word[]): string => words.map(({ name }) => name).join('; ');

export const words = <Row>(title: string, of: (row: Row) => readonly Word[]): Column<Row> => ({
  title,
  of: (row) => namesOf(of(row)) || null,
});

export const word = <Row>(title: string, of: (row: Row) => Word | null): Column<Row> =>
  text(title, (row) => of(row)?.name);

/** A day and a time as YYYY-MM-DD HH:MM, with the marks of doubt. */
export const moment = <Row>(title: string, of: (row: Row) => Moment | null | undefined): Column<Row> => ({
  title,
  of: (row) => {
    const found = of(row) ?? null;
    return found === null ? null : momentText(found);
  },
});

export const period = <Row>(title: string, of: (row: Row) => Period | null): Column<Row>[] => [
  moment(`${title}_from`, (row: Row) => of(row)?.from),
  moment(`${title}_to`, (row: Row) => of(row)?.to),
];

/** The last columns of each table of lines: the remark, and the line of the log, counted from 1. */
export const remarkAndLine = <
  Row extends { readonly line: number; readonly remark: { text: string } | null },
>(): Column<Row>[] => [text('remark', (row) => row.remark?.text), { title: 'line', of: (row) => row.line + 1 }];

export const table = <Row>(name: string, rows: readonly Row[], columns: readonly Column<Row>[]): CsvTable => ({
  name,
  columns: columns.map(({ title }) => title),
  rows: rows.map((row) => columns.map(({ of }) => of(row))),
});
