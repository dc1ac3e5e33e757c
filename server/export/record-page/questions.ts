import { escapeText } from '../../drawing/escape.ts';
import { element, textElement } from '../../drawing/html.ts';
import { questionTables } from '../../drawing/tables/finish-tables.ts';
import { tableWith } from '../../drawing/tables/table-html.ts';
import type { WellLog } from '../../model/log.ts';

/** What the notes leave open, with room to write the answer; null where they leave nothing open. */
export function questionsHtml(log: WellLog): string | null {
  const [table] = questionTables(log);
  if (table === undefined) return null;
  const withAnswers = {
    ...table,
    columns: [...table.columns, { title: 'Answer', numeric: false }],
    rows: table.rows.map((row) => ({ ...row, cells: [...row.cells, ''] })),
  };
  const last = withAnswers.columns.length - 1;
  return (
    textElement('p', {}, 'Each is a fact that someone who was at the well can give; nothing was put in its place.') +
    tableWith(withAnswers, (text, _, n) => (n === last ? element('span', { class: 'answer' }, '') : escapeText(text)))
  );
}
