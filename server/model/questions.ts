import type { Columns } from '../../grammar/span.ts';
import { rowById } from '../../grammar/table.ts';
import type { Line, Moment, Quantity, Value } from '../../grammar/tree.ts';
import type { WellLog } from './log.ts';
import { type Source, slotOf, spanOf } from './source.ts';

export type Question = WellLog['questions'][number];

type Ask = (at: Columns, kind: Question['kind']) => void;

const none: readonly Question[] = [];

function askOfQuantity(quantity: Quantity, ask: Ask): void {
  if (quantity.number === null && !quantity.td) ask(quantity, 'unknown');
  else if (quantity.doubtful) ask(quantity, 'doubtful');
  else if (quantity.approximate) ask(quantity, 'approximate');
}

function askOfMoment(moment: Moment, ask: Ask): void {
  if (moment.doubtful) ask(moment, 'doubtful');
  else if (moment.approximate) ask(moment, 'approximate');
}

/** The quantities, moments and open marks that a value is made of. */
function partsOf(value: Value): readonly Value[] {
  switch (value.kind) {
    case 'interval':
      return value.from ? [value.from, value.to] : [value.to];
    case 'period':
      return [value.from, value.to];
    case 'product':
      return value.factors;
    case 'list':
      return value.values.flatMap(partsOf);
    default:
      return [value];
  }
}

function askOfValue(value: Value, ask: Ask): void {
  for (const part of partsOf(value)) {
    if (part.kind === 'quantity') askOfQuantity(part, ask);
    else if (part.kind === 'moment') askOfMoment(part, ask);
    else if (part.kind === 'unknown' || (part.kind === 'text' && part.text === '?')) ask(part, 'unknown');
  }
}

/** The keyword of a line, or of its section for one that has none. */
const headOf = (line: Line): string => {
  const row = line.row === null ? null : rowById(line.row);
  return row?.keywords[0] ?? line.section ?? '';
};

/** What a line leaves open, in the order of its columns. */
export function questionsOf(source: Source): readonly Question[] {
  const { line } = source;
  let found: Question[] | null = null;
  const about =
    (what: () => string): Ask =>
    (at, kind) => {
      found ??= [];
      found.push({ span: spanOf(source, at), what: `${headOf(line)}: ${what()}`, kind });
    };
  if (line.depths)
    askOfValue(
      line.depths,
      about(() => 'depth'),
    );
  for (const { slot, label, value } of line.items) {
    askOfValue(
      value,
      about(() => label?.written ?? slotOf(source, slot)?.doc ?? slot),
    );
  }
  return found === null ? none : (found as Question[]).sort((a, b) => a.span.start - b.span.start);
}
