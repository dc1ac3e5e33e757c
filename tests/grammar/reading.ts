import { parseText } from '../../grammar/index.ts';
import type { Line, Quantity, Value } from '../../grammar/tree.ts';

function quantity(q: Quantity): string {
  const marks = `${q.approximate ? '~' : ''}${q.bound ?? ''}${q.plus ? '+' : ''}${q.minus ? '-' : ''}`;
  const number = q.td ? 'td' : q.number === null ? '?' : String(Math.round(q.number * 1e6) / 1e6);
  const high = q.high === null ? '' : `..${q.high}`;
  const unit = q.unit ? ` ${q.unit.id}` : '';
  return `${marks}${number}${high}${unit}${q.doubtful ? ' doubtful' : ''}${q.datum ? ` ${q.datum}` : ''}`;
}

/** A value in a form that a test can state in a few characters. */
export function valueReading(value: Value): string {
  switch (value.kind) {
    case 'quantity':
      return quantity(value);
    case 'interval':
      return `${value.from ? quantity(value.from) : '…'} to ${quantity(value.to)}`;
    case 'product':
      return `${value.factors.map(quantity).join(' x ')}${value.counted ? ` ${value.counted.id}` : ''}`;
    case 'moment':
      return [value.date, value.time, value.doubtful ? 'doubtful' : null].filter((each) => each !== null).join(' ');
    case 'period':
      return `${valueReading(value.from)} to ${valueReading(value.to)}`;
    case 'grading':
      return `grading ${value.coarse}/${value.fine}`;
    case 'hash-number':
      return `#${value.number}`;
    case 'unknown':
      return 'unknown';
    case 'text':
      return `'${value.text}'`;
    case 'term':
      return value.term.name;
    case 'description':
      return `"${value.long}"`;
    case 'list':
      return value.values.map(valueReading).join(', ');
    case 'flag':
      return 'yes';
  }
}

/** `row | depths | slot: value; … | problem <written>; …`, the empty parts left out at the end. */
export function lineReading(line: Line): string {
  const items = line.items.map(
    (item) => `${item.slot}${item.label?.term ? ` ${item.label.term.name}` : ''}: ${valueReading(item.value)}`,
  );
  const problems = line.problems.map((each) => `${each.code} <${each.written}>`);
  const parts = [line.row ?? '-', line.depths ? valueReading(line.depths) : '', items.join('; '), problems.join('; ')];
  while (parts.length > 1 && parts[parts.length - 1] === '') parts.pop();
  return parts.join(' | ');
}

/** The readings of the lines of a text that are marked with a leading `>`; the others set the scene. */
export function readings(text: string): string[] {
  const lines = text.split('\n');
  const tree = parseText(lines.map((line) => line.replace(/^>/, '')).join('\n'));
  return tree.lines.filter((_, at) => lines[at]?.startsWith('>')).map(lineReading);
}
