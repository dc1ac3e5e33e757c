import type { Columns } from '../../grammar/span.ts';
import { rowById } from '../../grammar/table.ts';
import type { Line, Quantity, Value } from '../../grammar/tree.ts';
import type { WellLog } from './log.ts';
import { type Source, slotOf, spanOf } from './source.ts';

export type Question = WellLog['questions'][number];

type Found = (at: Columns, kind: Question['kind']) => void;

const none: readonly Question[] = [];

function kindOfQuantity({ number, td, doubtful, approximate }: Quantity): Question['kind'] | null {
  if (number === null && !td) return 'unknown';
  if (doubtful) return 'doubtful';
  return approximate ? 'approximate' : null;
}

function kindOf(value: Value): Question['kind'] | null {
  if (value.kind === 'quantity') return kindOfQuantity(value);
  if (value.kind === 'moment') return value.doubtful ? 'doubtful' : value.approximate ? 'approximate' : null;
  return value.kind === 'unknown' || (value.kind === 'text' && value.text === '?') ? 'unknown' : null;
}

/** The quantities, moments and open marks that a value is made of; null where it is not made of several. */
function partsOf(value: Value): readonly (Value | null)[] | null {
  if (value.kind === 'interval' || value.kind === 'period') return [value.from, value.to];
  if (value.kind === 'product') return value.factors;
  return value.kind === 'list' ? value.values : null;
}

function ask(value: Value, found: Found): void {
  if (value.kind === 'description')
    for (const doubt of value.doubts) found(doubt, doubt.about === 'word' ? 'doubtful' : 'unknown');
  for (const part of partsOf(value) ?? []) if (part !== null) ask(part, found);
  const kind = kindOf(value);
  if (kind !== null) found(value, kind);
}

function isOpen(value: Value): boolean {
  if (value.kind === 'description') return value.doubts.length > 0;
  if (value.kind === 'interval') return (value.from !== null && isOpen(value.from)) || isOpen(value.to);
  return kindOf(value) !== null || (partsOf(value)?.some((part) => part !== null && isOpen(part)) ?? false);
}

/** True where a line leaves something open. */
function leavesOpen({ depths, items }: Line): boolean {
  if (depths !== null && isOpen(depths)) return true;
  for (const { value } of items) if (isOpen(value)) return true;
  return false;
}

/** The keyword of a line, or of its section for one that has none. */
const headOf = (line: Line): string => {
  const row = line.row === null ? null : rowById(line.row);
  return row?.keywords[0] ?? line.section ?? '';
};

function openOf(source: Source): Question[] {
  const { line } = source;
  const questions: Question[] = [];
  const about =
    (what: string): Found =>
    (at, kind) =>
      questions.push({ span: spanOf(source, at), what: `${headOf(line)}: ${what}`, kind });
  if (line.depths) ask(line.depths, about('depth'));
  for (const { slot, label, value } of line.items)
    ask(value, about(label?.written ?? slotOf(source, slot)?.doc ?? slot));
  return questions.sort((a, b) => a.span.start - b.span.start);
}

/** What a line leaves open, in the order of its columns. */
export const questionsOf = (source: Source): readonly Question[] => (leavesOpen(source.line) ? openOf(source) : none);
