import type { Columns, Span } from '../../grammar/span.ts';
import { spanAt } from '../../grammar/span.ts';
import { type Row, rowById, type Slot } from '../../grammar/table.ts';
import type { Item, Line, Value } from '../../grammar/tree.ts';
import type { Depth, TextField } from './log.ts';
import type { Setting } from './setting.ts';

/** A line, where it stands, and what its bare numbers mean. */
export interface Source {
  readonly line: Line;
  /** Line number from 0. */
  readonly number: number;
  readonly setting: Setting;
  /** Base of the last interval of the section, where a line begins with the dash; else null. */
  readonly above: Depth | null;
}

/** The first item in a slot. */
export function itemIn({ line }: Source, slot: string): Item | null {
  for (const item of line.items) if (item.slot === slot) return item;
  return null;
}

const none: readonly Value[] = [];

/** Every value in a slot that may hold several, lists taken apart. */
export function valuesIn(source: Source, slot: string): readonly Value[] {
  return itemIn(source, slot) === null ? none : valuesOf(source, slot);
}

function valuesOf({ line }: Source, slot: string): readonly Value[] {
  const values: Value[] = [];
  for (const { slot: name, value } of line.items) {
    if (name !== slot) continue;
    if (value.kind === 'list') values.push(...value.values);
    else values.push(value);
  }
  return values;
}

const slotsByRow = new Map<string, ReadonlyMap<string, Slot>>();

/** The row that reads what follows a keyword: the first line of a section may stand beside its keyword. */
function bodyRow(id: string): Row {
  const row = rowById(id);
  return row.opensBeforeDepth && row.lines !== null ? rowById(row.lines) : row;
}

function slotsOf(row: string): ReadonlyMap<string, Slot> {
  const known = slotsByRow.get(row);
  if (known) return known;
  const slots = new Map(bodyRow(row).slots.map((slot) => [slot.slot, slot]));
  slotsByRow.set(row, slots);
  return slots;
}

/** The table's entry for a slot of the line's row; null for rows whose body is no list of items. */
export const slotOf = ({ line }: Source, slot: string): Slot | null =>
  line.row === null ? null : (slotsOf(line.row).get(slot) ?? null);

export const spanOf = ({ number }: Source, columns: Columns): Span => spanAt(number, columns);

export const writtenAt = ({ line }: Source, { start, end }: Columns): string => line.text.slice(start, end);

const isBlank = (text: string, at: number): boolean => {
  const code = text.charCodeAt(at);
  return code <= 32 || code === 0xa0;
};

/** The stretch of a line that is part of the record: without indentation and comment. */
export function wholeSpan({ line, number }: Source): Span {
  const { text, comment } = line;
  let start = 0;
  let end = comment ? Math.min(comment.start, text.length) : text.length;
  while (start < end && isBlank(text, start)) start += 1;
  while (end > start && isBlank(text, end - 1)) end -= 1;
  return { line: number, start, end };
}

/** What every line of the record has. */
export interface Entry {
  line: number;
  span: Span;
  remark: TextField | null;
}

export function entryOf(source: Source): Entry {
  const { remark } = source.line;
  return {
    line: source.number,
    span: wholeSpan(source),
    remark: remark ? { text: remark.text, span: spanOf(source, remark) } : null,
  };
}
