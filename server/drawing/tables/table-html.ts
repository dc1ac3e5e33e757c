import { element, fromLine, lineName, textElement } from '../html.ts';
import type { Table, TableColumn, TableRow } from './table.ts';

const classOf = (column: TableColumn | undefined): string | null => (column?.numeric ? 'number' : null);

/** What a cell says, as HTML, and whether it names its row. */
export type CellHtml = (text: string, row: TableRow, n: number) => string;

function cellHtml(n: number, column: TableColumn | undefined, inner: string): string {
  if (n === 0) return element('th', { scope: 'row' }, inner);
  return element('td', { class: classOf(column), 'data-label': column?.title ?? null }, inner);
}

const rowHtml = (row: TableRow, { columns }: Table, inner: CellHtml): string =>
  element('tr', fromLine(row.line), row.cells.map((text, n) => cellHtml(n, columns[n], inner(text, row, n))).join(''));

/** A table with its caption; `inner` makes the cells. */
export function tableWith(table: Table, inner: CellHtml): string {
  const heads = table.columns.map((column, n) =>
    textElement('th', { scope: 'col', class: n === 0 ? null : classOf(column) }, column.title),
  );
  const rows = table.rows.map((row) => rowHtml(row, table, inner));
  return element(
    'table',
    {},
    `\n${textElement('caption', {}, table.caption)}\n<thead><tr>${heads.join('')}</tr></thead>\n<tbody>\n${rows.join('\n')}\n</tbody>\n`,
  );
}

/** A table whose rows lead to their lines, by keyboard too. */
export const tableHtml = (table: Table): string =>
  tableWith(table, (text, { line }, n) => lineName(line, text, n === 0));
