import { isStringSection, type Row, rowById } from '../../../grammar/table.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { itemText, quantityText, valueText } from '../../../grammar/write.ts';

/** A line taken apart into what the formatter lines up. */
export interface Cells {
  readonly kind: 'header' | 'section' | 'under' | 'depth-line' | 'line';
  readonly row: string;
  /** Lines with the same group line up with each other. */
  readonly group: string;
  readonly keyword: string;
  /** Top and bottom of an interval; a single depth stands in `top`. */
  readonly top: string;
  readonly bottom: string;
  readonly interval: boolean;
  /** Columns after the depths. */
  readonly columns: readonly string[];
}

/** Problems that the text written from the items does not lose. */
const harmless = new Set([
  'interval-without-dash',
  'near-keyword',
  'allow-without-reason',
  'missing-value',
  'nominal-or-outside',
]);

/** True where all that a line says is in its items, so that it can be written from them. */
export function isWritable(line: Line): boolean {
  if (line.row === null) return false;
  return line.problems.every(
    (each) => harmless.has(each.code) || (each.code === 'unknown-term' && line.row === 'strata.line'),
  );
}

/** The row that reads the items of a line: a section's first line may stand beside its keyword. */
function readingRow(line: Line): Row {
  const row = rowById(line.row ?? '');
  return row.lines !== null && row.opensBeforeDepth ? rowById(row.lines) : row;
}

const isFlush = (item: Item | undefined): boolean => item?.slot === 'flush';

/** Items in writing order, flushes used together joined by a plus. */
function texts(row: Row, line: Line): { item: Item; text: string }[] {
  const items = [...line.items].sort(
    (a, b) => Number(b.slot === 'description') - Number(a.slot === 'description') || a.start - b.start,
  );
  const out: { item: Item; text: string }[] = [];
  for (const item of items) {
    const text = itemText(row.id, item, line.text);
    const before = out[out.length - 1];
    const between = before ? line.text.slice(before.item.end, item.start) : '';
    if (before && isFlush(before.item) && isFlush(item) && /^\s*([+&/]|and)\s*$/i.test(between)) {
      out[out.length - 1] = { item, text: `${before.text}+${text}` };
    } else out.push({ item, text });
  }
  return out;
}

/** Rows whose first two items belong together (`pump 40 L/min`). */
const paired = new Set(['test', 'pump', 'drilling']);

function separator(row: Row, before: Item, item: Item): string {
  if (isStringSection(row.id)) return '  ';
  if (row.id === 'place') return item.label ? ', ' : ' ';
  if (row.body === 'words') return ' ';
  if (row.id === 'shift' && item.slot === 'temperature') return ' ';
  if (
    paired.has(row.id) &&
    !item.label &&
    item.value.kind === 'quantity' &&
    before.value.kind !== 'moment' &&
    !before.label
  )
    return ' ';
  return ', ';
}

/** True where feet and the inches behind them would be read as one length with only blanks between them. */
const wouldJoin = (before: string, next: string): boolean =>
  /(?:\bft|')$/.test(before) && /^\d[\d./ -]*\s?(?:in\b|")/.test(next);

function joined(row: Row, parts: readonly { item: Item; text: string }[]): string {
  let out = '';
  let before: Item | null = null;
  for (const { item, text } of parts) {
    const blanks = before ? separator(row, before, item) : '';
    out += `${blanks.trim() === '' && wouldJoin(out, text) ? ',' : ''}${blanks}${text}`;
    before = item;
  }
  return out;
}

/** Texts that blanks part from each other, with a comma where blanks alone would not. */
const parted = (texts: readonly string[]): readonly string[] =>
  texts.map((text, at) => (wouldJoin(text, texts.slice(at + 1).find((next) => next !== '') ?? '') ? `${text},` : text));

/** Rows whose first item is a column of its own. */
const firstColumn: Readonly<Record<string, string>> = {
  'hole.line': 'diameter',
  'drilling.line': 'time',
  'test.line': 'elapsed',
};

/** The word that says a place is given by its grid. */
const prefix = (line: Line): string => (line.items.some((item) => item.slot === 'easting') ? 'utm ' : '');

function columnsOf(row: Row, line: Line): string[] {
  const parts = texts(row, line);
  const first = firstColumn[row.id];
  const head = parts[0];
  if (!first || !head || head.item.slot !== first || head.item.label)
    return parts.length > 0 ? [prefix(line) + joined(row, parts)] : [];
  const rest = parts.slice(1);
  if (row.id === 'drilling.line')
    return [head.text, rest.map((each) => each.text).join(' ')].filter((each) => each !== '');
  if (row.id === 'test.line') {
    const [second, ...others] = rest;
    return [head.text, ...(second ? [second.text] : []), ...(others.length > 0 ? [joined(row, others)] : [])];
  }
  return rest.length > 0 ? [head.text, joined(row, rest)] : [head.text];
}

const kindOf = (row: Row, line: Line): Cells['kind'] => {
  if (row.where === 'file') return 'header';
  if (row.where === 'section' || line.keyword?.id === line.section) return 'section';
  return row.where;
};

/** The depths of a line as they are written. */
export function depthCells({ depths, text }: Line): Pick<Cells, 'top' | 'bottom' | 'interval'> {
  const interval = depths?.kind === 'interval';
  const from = depths?.kind === 'interval' ? depths.from : depths;
  return {
    top: from ? quantityText(from, text) : '',
    bottom: depths?.kind === 'interval' ? valueText({ ...depths, from: null }, text).slice(2) : '',
    interval,
  };
}

/** The cells of a line that can be written from its items. */
export function cellsOf(line: Line): Cells {
  const own = rowById(line.row ?? '');
  const row = readingRow(line);
  const depths = depthCells(line);
  const [top = '', bottom = '', ...columns] = parted([depths.top, depths.bottom, ...columnsOf(row, line)]);
  return {
    ...depths,
    ...(depths.interval ? { bottom } : { top }),
    kind: kindOf(own, line),
    row: row.id,
    group: `${own.where} ${line.section}`,
    keyword: line.keyword ? line.keyword.written.toLowerCase() : '',
    columns,
  };
}
