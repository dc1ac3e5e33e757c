import { LineNotes } from '../../grammar/line-notes.ts';
import type { Line, Quantity, Value } from '../../grammar/tree.ts';
import type { Depth, Interval } from './log.ts';
import { type Question, questionsOf } from './questions.ts';
import type { Setting } from './setting.ts';
import type { Source } from './source.ts';

/** What one line says by itself. */
export interface Fact<T> {
  readonly number: number;
  readonly setting: Setting;
  readonly above: Depth | null;
  readonly entry: T;
  readonly questions: readonly Question[];
  /** True where a depth waits for the rest of the log: from the top of the casing, or `td`. */
  readonly waits: boolean;
}

const quantityWaits = ({ td, datum }: Quantity, setting: Setting): boolean =>
  td || datum === 'toc' || setting.datum === 'toc';

function valueWaits(value: Value, setting: Setting): boolean {
  if (value.kind === 'quantity') return quantityWaits(value, setting);
  if (value.kind === 'list') return value.values.some((each) => valueWaits(each, setting));
  if (value.kind !== 'interval') return false;
  return quantityWaits(value.to, setting) || (value.from !== null && quantityWaits(value.from, setting));
}

function lineWaits({ depths, items }: Line, setting: Setting): boolean {
  if (depths !== null && valueWaits(depths, setting)) return true;
  for (const { value } of items) if (valueWaits(value, setting)) return true;
  return false;
}

/** Reads a line, or gives what was read of it before. `above` is the base that a line that begins with the dash goes on from. */
export type Reading<T> = (line: Line, number: number, setting: Setting, above: Depth | null) => Fact<T>;

function factOf<T>(source: Source, entry: T): Fact<T> {
  const { line, number, setting, above } = source;
  return { number, setting, above, entry, questions: questionsOf(source), waits: lineWaits(line, setting) };
}

const stands = <T>(fact: Fact<T>, number: number, setting: Setting): boolean =>
  fact.number === number && fact.setting === setting;

/**
 * Reads lines by `read` and keeps what each says for as long as the line object lives, so that after an edit only
 * changed lines are read. A line that has moved, or whose bare numbers have come to mean something else, is read again.
 */
export function remembered<T>(read: (source: Source) => T): Reading<T> {
  const facts = new LineNotes<Fact<T>>();
  return (line, number, setting, above) => {
    const known = facts.get(line);
    if (known && stands(known, number, setting)) return known;
    const source = { line, number, setting, above };
    const fact = factOf(source, read(source));
    facts.set(line, fact);
    return fact;
  };
}

interface WithInterval {
  interval: Interval | null;
}

/** A line that now goes on from another base; all else that it says, its own base included, stays the same. */
function goingOn<T extends WithInterval>(fact: Fact<T>, top: Depth): Fact<T> {
  const { interval } = fact.entry;
  return { ...fact, above: top, entry: { ...fact.entry, interval: interval && { ...interval, top } } };
}

/** As `remembered`, for lines that may begin with the dash. */
export function rememberedBelow<T extends WithInterval>(read: (source: Source) => T): Reading<T> {
  const facts = new LineNotes<Fact<T>>();
  return (line, number, setting, above) => {
    const known = facts.get(line);
    const still = known && stands(known, number, setting);
    if (still && known.above === above) return known;
    const source = { line, number, setting, above };
    const fact = still && above !== null ? goingOn(known, above) : factOf(source, read(source));
    facts.set(line, fact);
    return fact;
  };
}
