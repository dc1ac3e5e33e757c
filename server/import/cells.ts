import * as l10n from '@vscode/l10n';
import { parse } from 'csv-parse/sync';
import type { Trouble } from './notes.ts';

export type Delimiter = ',' | ';' | '\t' | '|' | 'blanks';

/** One row of a table, with its lines in the notes counted from 1. */
export interface TableRow {
  readonly first: number;
  readonly last: number;
  readonly cells: readonly string[];
}

export interface Cells {
  readonly rows: readonly TableRow[];
  readonly troubles: readonly Trouble[];
}

/** A quotation mark alone in its cell is a ditto mark, and no cell that goes on over the next lines. */
const loneQuote = (delimiter: string): RegExp =>
  new RegExp(
    `(^|[${delimiter === '\t' ? '\\t' : delimiter}])[ ]*"[ ]*(?=$|[${delimiter === '\t' ? '\\t' : delimiter}])`,
    'gm',
  );

const withDittos = (text: string, delimiter: string): string =>
  text.includes('"') ? text.replace(loneQuote(delimiter), '$1""""') : text;

interface Parsed {
  readonly record: string[];
  /** The last line of the row. */
  readonly lines: number;
}

/** Fills `ends` with the last line of each row, up to the one that cannot be read. */
function parsed(text: string, delimiter: string, quote: '"' | null, ends: number[] = []): Parsed[] {
  const records = parse(text, {
    delimiter,
    quote,
    on_record: (record: string[], { lines }) => {
      ends.push(lines);
      return record;
    },
    relax_column_count: true,
    skip_empty_lines: true,
    trim: true,
    record_delimiter: ['\r\n', '\n', '\r'],
  });
  return records.map((record, at) => ({ record, lines: ends[at] ?? 0 }));
}

const isBlank = (line: string | undefined): boolean => line === undefined || line.trim() === '';

function rowsOf(records: readonly Parsed[], lines: readonly string[]): TableRow[] {
  let above = 0;
  return records.map(({ record, lines: last }) => {
    let first = above + 1;
    while (first < last && isBlank(lines[first - 1])) first++;
    above = last;
    return { first, last, cells: record };
  });
}

function quoted(text: string, delimiter: string, lines: readonly string[]): Cells {
  const whole = withDittos(text, delimiter);
  const ends: number[] = [];
  try {
    return { rows: rowsOf(parsed(whole, delimiter, '"', ends), lines), troubles: [] };
  } catch {
    const line = (ends.at(-1) ?? 0) + 1;
    const says = l10n.t(
      'a quotation mark here opens or closes no cell; the whole table is read with quotation marks as plain characters',
    );
    return { rows: rowsOf(parsed(text, delimiter, null), lines), troubles: [{ line, says }] };
  }
}

const splitters: Readonly<Record<'|' | 'blanks', (line: string) => string[]>> = {
  '|': (line) => line.trim().replace(/^\|/, '').replace(/\|$/, '').split('|'),
  blanks: (line) => line.trim().split(/\s{2,}|\t/),
};

function split(lines: readonly string[], delimiter: '|' | 'blanks'): TableRow[] {
  return lines.flatMap((line, at) =>
    isBlank(line)
      ? []
      : [{ first: at + 1, last: at + 1, cells: splitters[delimiter](line).map((cell) => cell.trim()) }],
  );
}

/** The cells of a text that is a table. Never throws: broken quoting is told, and read as plain characters. */
export const cellsOf = (lines: readonly string[], delimiter: Delimiter): Cells =>
  delimiter === '|' || delimiter === 'blanks'
    ? { rows: split(lines, delimiter), troubles: [] }
    : quoted(lines.join('\n'), delimiter, lines);
