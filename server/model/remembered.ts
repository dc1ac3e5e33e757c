import type { Line, Quantity, Value, Interval as WrittenInterval } from '../../grammar/tree.ts';
import { type Question, questionsOf } from './questions.ts';
import type { Setting } from './setting.ts';
import type { Source } from './source.ts';

/** What one line says by itself. */
export interface Fact<T> {
  readonly number: number;
  readonly setting: Setting;
  readonly entry: T;
  readonly questions: readonly Question[];
  /** True where a depth waits for the rest of the log: from the top of the casing, or `td`. */
  readonly waits: boolean;
}

const quantityWaits = ({ td, datum }: Quantity, setting: Setting): boolean =>
  td || datum === 'toc' || setting.datum === 'toc';

const intervalWaits = ({ from, to }: WrittenInterval, setting: Setting): boolean =>
  quantityWaits(to, setting) || (from !== null && quantityWaits(from, setting));

function valueWaits(value: Value, setting: Setting): boolean {
  if (value.kind === 'quantity') return quantityWaits(value, setting);
  if (value.kind === 'interval') return intervalWaits(value, setting);
  return value.kind === 'list' && value.values.some((each) => valueWaits(each, setting));
}

const lineWaits = ({ depths, items }: Line, setting: Setting): boolean =>
  (depths !== null && valueWaits(depths, setting)) || items.some(({ value }) => valueWaits(value, setting));

/** Reads a line, or gives what was read of it before. */
export type Reading<T> = (line: Line, number: number, setting: Setting) => Fact<T>;

/**
 * Reads lines by `read` and keeps what each says for as long as the line object lives, so that after an edit only
 * changed lines are read. A line that has moved, or whose bare numbers have come to mean something else, is read again.
 */
export function remembered<T>(read: (source: Source) => T): Reading<T> {
  const facts = new WeakMap<Line, Fact<T>>();
  return (line, number, setting) => {
    const known = facts.get(line);
    if (known && known.number === number && known.setting === setting) return known;
    const source = { line, number, setting };
    const entry = read(source);
    const fact = { number, setting, entry, questions: questionsOf(source), waits: lineWaits(line, setting) };
    facts.set(line, fact);
    return fact;
  };
}
