import { element, fromLine, textElement } from '../html.ts';
import type { Table, TableColumn, TableRow } from './table.ts';

const classOf = (column: TableColumn | undefined): string | null => (column?.numeric ? 'number' : null);

function cellHtml(text: string, n: number, column: TableColumn | undefined): string {
  if (n === 0) return textElement('th', { scope: 'row' }, text);
  return textElement('td', { class: classOf(column) }, text);
}

const rowHtml = (row: TableRow, { columns }: Table, reachable: boolean): string =>
  element('tr', fromLine(row.line, reachable), row.cells.map((text, n) => cellHtml(text, n, columns[n])).join(''));

/** A table with its caption; the rows lead to their lines, by keyboard too where `reachable`. */
export function tableHtml(table: Table, reachable: boolean): string {
  const heads = table.columns.map((column, n) =>
    textElement('th', { scope: 'col', class: n === 0 ? null : classOf(column) }, column.title),
  );
  const rows = table.rows.map((row) => rowHtml(row, table, reachable));
  return element(
    'table',
    {},
    `\n${textElement('caption', {}, table.caption)}\n<thead><tr>${heads.join('')}</tr></thead>\n<tbody>\n${rows.join('\n')}\n</tbody>\n`,
  );
}
