export type Cell = string | number | null;

/* A spreadsheet takes a cell that begins so for a formula; a tab or a line break before it does not stop it. */
const startsFormula = /^[=+\-@\t\r\n\uff0b\uff0d\uff1d\uff20]/;
const needsQuotes = /[",\r\n]|^\s|\s$/;

/** A text that a spreadsheet shows and does not run: an apostrophe goes before what would begin a formula. */
export const harmless = (text: string): string => (startsFormula.test(text) ? `'${text}` : text);

/** A number without the noise of binary fractions; empty for what is no finite number. */
const numberCell = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(12)) + 0) : '');

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return numberCell(cell);
  const text = harmless(cell);
  return needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Rows as CSV by RFC 4180, with CRLF. Null is an empty cell. Text that a spreadsheet would take for a formula gets an
 * apostrophe before it; numbers stay numbers.
 */
export const csvText = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
