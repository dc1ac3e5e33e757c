import { escapeText } from '../../drawing/escape.ts';
import { textElement } from '../../drawing/html.ts';
import { recordTables } from '../../drawing/tables/record-tables.ts';
import type { Table, TableGroup, TableRow } from '../../drawing/tables/table.ts';
import { tableWith } from '../../drawing/tables/table-html.ts';
import type { WellLog } from '../../model/log.ts';
import { inOtherUnits } from './other-units.ts';

/** A table, and the same in the other system of units. */
interface TablePair {
  readonly own: Table;
  readonly other: Table;
}

export interface GroupInBothUnits {
  readonly id: string;
  readonly title: string;
  readonly html: string;
}

/** What the other cell says that the own one does not: of pieces set off by commas, those that differ. */
export function otherPieces(own: string, other: string): string {
  const pieces = own.split(', ');
  const others = other.split(', ');
  if (pieces.length !== others.length) return own === other ? '' : other;
  return others.filter((piece, n) => piece !== pieces[n]).join(', ');
}

/** A heading with what differs in the other units in brackets behind it: `Level, m (ft)`. */
export function inBothWords(own: string, other: string): string {
  const words = own.split(' ');
  const others = other.split(' ');
  const differing = words.flatMap((word, n) => (word === others[n] ? [] : [n]));
  const [first, last] = [differing[0], differing.at(-1)];
  if (words.length !== others.length || first === undefined || last === undefined) return own;
  const bracketed = `(${others.slice(first, last + 1).join(' ')})`;
  return [...words.slice(0, last + 1), bracketed, ...words.slice(last + 1)].join(' ');
}

const inBothHeadings = ({ own, other }: TablePair): Table => ({
  ...own,
  caption: inBothWords(own.caption, other.caption),
  columns: own.columns.map((column, n) => ({
    ...column,
    title: inBothWords(column.title, other.columns[n]?.title ?? column.title),
  })),
});

function cellInBoth(text: string, other: string): string {
  const pieces = otherPieces(text, other);
  return pieces === ''
    ? escapeText(text)
    : `${escapeText(text)} ${textElement('span', { class: 'other' }, `(${pieces})`)}`;
}

function pairHtml(pair: TablePair): string {
  const others = new Map<TableRow, TableRow | undefined>(pair.own.rows.map((row, n) => [row, pair.other.rows[n]]));
  const table = inBothHeadings(pair);
  return tableWith(table, (text, row, n) => cellInBoth(text, others.get(row)?.cells[n] ?? text));
}

function groupHtml({ id, title, tables }: TableGroup, other: TableGroup | undefined): GroupInBothUnits {
  const html = tables.map((own, n) => pairHtml({ own, other: other?.tables[n] ?? own })).join('\n');
  return { id, title, html };
}

/** The tables of the record, each value as it was logged and, in brackets, in the other system of units. */
export function tablesInBothUnits(log: WellLog): GroupInBothUnits[] {
  const others = recordTables(inOtherUnits(log));
  return recordTables(log).map((group) =>
    groupHtml(
      group,
      others.find(({ id }) => id === group.id),
    ),
  );
}
