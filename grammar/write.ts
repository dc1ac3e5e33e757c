import { plainCharacters } from './characters.ts';
import { rowById, type Slot } from './table.ts';
import type { Item, Line, Moment, Quantity, Value } from './tree.ts';
import { type Unit, unitBySpelling } from './units.ts';

/** Spellings that say more than their unit's canonical one and are kept. */
const keptSpellings = new Set(['ppm', 'ppb', 'ppg', 'pcf', 'psig', 'scfm', '"', "''"]);

/** `.3` as `0.3`, `5.` as `5`, `007` as `7`; digits after the point stay. */
function figureText(quantity: Quantity): string {
  const { figure, form } = quantity;
  if (form === 'feet-inches') return /'\s*[^"']*$/.test(figure) && !figure.endsWith("'") ? `${figure}"` : figure;
  if (form !== 'plain' || !/^[\d.]+$/.test(figure)) return figure;
  const [whole = '', part] = figure.replace(/\.$/, '').split('.');
  const number = whole.replace(/^0+(?=\d)/, '') || '0';
  return part === undefined ? number : `${number}.${part}`;
}

const singular: Readonly<Record<string, string>> = { bags: 'bag', pails: 'pail' };

function unitText(unit: Unit, written: string, one: boolean): string {
  const kept = written.toLowerCase();
  if (kept === '"' || kept === "''") return '"';
  if (keptSpellings.has(kept)) return ` ${kept}`;
  return ` ${one ? (singular[unit.id] ?? unit.id) : unit.id}`;
}

const markText = (quantity: Quantity): string => {
  const sign = quantity.minus ? '-' : quantity.plus ? '+' : '';
  const more = quantity.bound ?? '';
  return `${quantity.approximate ? '~' : ''}${more}${sign}`;
};

const squeezed = (text: string): string => plainCharacters(text).replace(/\s+/g, ' ').trim();

function rangeText(quantity: Quantity, source: string): string {
  const numbers = squeezed(source.slice(quantity.start, quantity.unitAt?.start ?? quantity.end));
  const unit =
    quantity.unit && quantity.unitAt
      ? unitText(quantity.unit, source.slice(quantity.unitAt.start, quantity.unitAt.end), false)
      : '';
  return `${numbers.replace(/\s*(?:-|\bto\b)\s*/i, '-')}${unit}`;
}

/** A measured value in its canonical form, the digits as written. */
export function quantityText(quantity: Quantity, source: string): string {
  if (quantity.high !== null) return rangeText(quantity, source);
  const { unit, unitAt } = quantity;
  const written = unitAt ? source.slice(unitAt.start, unitAt.end) : '';
  const spelled =
    unit && unitAt && quantity.form !== 'feet-inches' ? unitText(unit, written, quantity.number === 1) : '';
  const figure = quantity.td ? 'td' : quantity.number === null ? '?' : figureText(quantity);
  const datum = quantity.datum ? ` ${quantity.datum}` : '';
  return `${markText(quantity)}${figure}${quantity.doubtful ? '?' : ''}${spelled}${datum}`;
}

const momentText = (moment: Moment): string => {
  const timeOnly = moment.end - moment.start < 10;
  const parts = timeOnly ? [moment.time] : [moment.date, moment.time];
  return `${moment.approximate ? '~' : ''}${parts.filter((each) => each !== null).join(' ')}${moment.doubtful ? '?' : ''}`;
};

const countedText = (unit: Unit | null): string => (unit ? ` ${unit.id}` : '');

/** A value in its canonical form. Text is as it was written. */
export function valueText(value: Value, source: string): string {
  switch (value.kind) {
    case 'quantity':
      return quantityText(value, source);
    case 'interval':
      return `${value.from ? `${quantityText(value.from, source)} ` : ''}- ${quantityText(value.to, source)}`;
    case 'product':
      return `${value.factors.map((each) => quantityText(each, source)).join(' x ')}${countedText(value.counted)}`;
    case 'moment':
      return momentText(value);
    case 'period':
      return `${momentText(value.from)} - ${momentText(value.to)}`;
    case 'grading':
      return `${value.coarse}/${value.fine}`;
    case 'hash-number':
      return `#${value.number}`;
    case 'unknown':
      return '?';
    case 'term':
      return value.term.name;
    case 'description':
      return value.long;
    case 'list':
      return value.values.map((each) => valueText(each, source)).join('  ');
    case 'text':
    case 'flag':
      return source.slice(value.start, value.end);
  }
}

const slotOf = (row: string, slot: string): Slot | undefined => rowById(row).slots.find((each) => each.slot === slot);

const labelText = (row: string, item: Item): string => {
  if (!item.label) return '';
  if (item.label.term) return `${item.label.term.name} `;
  const label = slotOf(row, item.slot)?.labels[0] ?? item.label.written;
  return `${label} `;
};

/** An item in its canonical form, its label before it. */
export const itemText = (row: string, item: Item, source: string): string =>
  `${labelText(row, item)}${valueText(item.value, source)}`;

/** True for a unit spelling that the formatter leaves alone. */
export const isKeptSpelling = (spelling: string): boolean =>
  keptSpellings.has(spelling.toLowerCase()) && (unitBySpelling(spelling) !== undefined || spelling === '"');

const quantityMeaning = (q: Quantity): string =>
  [
    markText(q),
    q.td ? 'td' : q.number === null ? '?' : String(Math.round(q.number * 1e9) / 1e9),
    q.high ?? '',
    q.decimals,
    q.unit?.id ?? '',
    q.doubtful ? '?' : '',
    q.datum ?? '',
  ].join('|');

function valueMeaning(value: Value): string {
  switch (value.kind) {
    case 'quantity':
      return quantityMeaning(value);
    case 'interval':
      return `${value.from ? quantityMeaning(value.from) : '^'}~${quantityMeaning(value.to)}`;
    case 'product':
      return `${value.factors.map(quantityMeaning).join('x')}${value.counted?.id ?? ''}`;
    case 'list':
      return value.values.map(valueMeaning).join(' ');
    case 'description':
      return value.long;
    case 'text':
      return value.text;
    case 'flag':
      return 'flag';
    default:
      return valueText(value, '');
  }
}

/** What a line says, whatever its spelling, blanks and the order of its items: equal for lines that mean the same. */
export function meaningOf(line: Line): string {
  const depths = line.depths ? valueMeaning(line.depths) : '';
  const items = line.items
    .map((item) => `${item.slot}:${item.label?.term?.id ?? ''}=${valueMeaning(item.value)}`)
    .sort();
  const problems = line.problems.map((each) => `${each.code} ${each.written}`).sort();
  const allow = line.allow ? `${line.allow.rules.map((each) => each.id).join()}:${line.allow.reason}` : '';
  return JSON.stringify([
    line.row,
    line.section,
    line.keyword?.id,
    depths,
    items,
    problems,
    line.remark?.text,
    line.comment?.text,
    allow,
  ]);
}
