import type { Table, TableColumn } from '../drawing/tables/table.ts';

/* Controls and format characters: in a terminal they would act, and a line break in a value would break its line. */
const acting = /[\p{Cc}\p{Cf}\u2028\u2029]/gu;

/** Text on one line, without characters that act on a terminal. */
export const oneLine = (text: string): string => text.replace(/[\t\r\n]+/g, ' ').replace(acting, '\ufffd');

const widthOf = (text: string): number => [...text].length;

function padded(text: string, width: number, column: TableColumn | undefined): string {
  const blanks = ' '.repeat(Math.max(0, width - widthOf(text)));
  return column?.numeric ? blanks + text : text + blanks;
}

/** A heading with a rule under it. */
export const heading = (title: string, mark: '=' | '-'): string => `${title}\n${mark.repeat(widthOf(title))}`;

/** A table in columns set off by two blanks, numbers flush right. */
export function tableText(table: Table): string {
  const rows = [table.columns.map(({ title }) => oneLine(title)), ...table.rows.map(({ cells }) => cells.map(oneLine))];
  const widths = table.columns.map((_, n) => rows.reduce((most, cells) => Math.max(most, widthOf(cells[n] ?? '')), 0));
  const lines = rows.map((cells) =>
    cells
      .map((text, n) => padded(text, widths[n] ?? 0, table.columns[n]))
      .join('  ')
      .trimEnd(),
  );
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  return [oneLine(table.caption), ...lines.slice(0, 1), rule, ...lines.slice(1)]
    .map((line) => `  ${line}`.trimEnd())
    .join('\n');
}
