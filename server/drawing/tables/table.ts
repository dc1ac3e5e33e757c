/** One row of a table of the record; `line` is where it comes from, from 0. */
export interface TableRow {
  readonly line: number | null;
  readonly cells: readonly string[];
}

export interface TableColumn {
  readonly title: string;
  readonly numeric: boolean;
}

/** A table of the record as plain text; the first cell of a row names it. */
export interface Table {
  readonly caption: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
}

/** The tables that belong under one heading. */
export interface TableGroup {
  /** Kebab-case, unique in the record. */
  readonly id: string;
  readonly title: string;
  readonly tables: readonly Table[];
}

/** One column: its title and what it says of a row. */
export interface Field<T> extends TableColumn {
  readonly text: (row: T) => string;
}

export const words = <T>(title: string, text: (row: T) => string): Field<T> => ({ title, text, numeric: false });
export const figures = <T>(title: string, text: (row: T) => string): Field<T> => ({ title, text, numeric: true });

/** A table of the rows, without columns that say nothing of any; none at all where there are no rows. */
export function tableOf<T extends { readonly line: number | null }>(
  caption: string,
  rows: readonly T[],
  fields: readonly Field<T>[],
): Table[] {
  const texts = rows.map((row) => fields.map((field) => field.text(row)));
  const kept = fields.map((_, n) => n === 0 || texts.some((cells) => cells[n] !== ''));
  const keep = <V>(values: readonly V[]): V[] => values.filter((_, n) => kept[n]);
  if (rows.length === 0) return [];
  return [
    {
      caption,
      columns: keep(fields).map(({ title, numeric }) => ({ title, numeric })),
      rows: rows.map((row, n) => ({ line: row.line, cells: keep(texts[n] ?? []) })),
    },
  ];
}

/** A fact with its name. */
export interface Fact {
  readonly line: number | null;
  readonly name: string;
  readonly text: string;
}

/** A table of facts: name and what the notes say; without those of which they say nothing. */
export const factTable = (caption: string, facts: readonly Fact[]): Table[] =>
  tableOf<Fact>(
    caption,
    facts.filter(({ text }) => text !== ''),
    [words('Item', (each) => each.name), words('As logged', (each) => each.text)],
  );
