import { rememberedOfLine } from '../../grammar/line-notes.ts';
import { type Row, rowById, type Slot } from '../../grammar/table.ts';
import type { Item, Line, Quantity, Value } from '../../grammar/tree.ts';
import { toSi, type Unit, unitById, withGallon } from '../../grammar/units.ts';
import type { FileUnits } from '../model/log.ts';

/** What a number on a line stands for, which says how it is read where no unit stands beside it. */
export type Role = 'depth' | 'diameter' | 'count' | 'time' | 'other';

/** A number on a line. `slot` is null for the depths that the line begins with. */
export interface Amount {
  readonly quantity: Quantity;
  readonly role: Role;
  readonly slot: Slot | null;
}

/** The row that a line's keyword names, or that reads the lines of its section. */
export const rowOf = (line: Line): Row | null => (line.row === null ? null : rowById(line.row));

/** The row whose slots a line's items have: that of the section's lines where the first of them stands beside the keyword. */
export function bodyRowOf(line: Line): Row | null {
  const row = rowOf(line);
  const standsBeside = row?.opensBeforeDepth && row.lines !== null;
  return standsBeside && row.lines !== null ? rowById(row.lines) : row;
}

const slotOf = (row: Row | null, name: string): Slot | null => row?.slots.find((slot) => slot.slot === name) ?? null;

/** How a number in a slot is read. */
export function roleOf(slot: Slot | null): Role {
  if (slot === null) return 'other';
  if (slot.accepts.some((accepts) => accepts.kind === 'elapsed')) return 'time';
  if (slot.accepts.some((accepts) => accepts.kind === 'interval')) return 'depth';
  return slot.bare === 'depth' || slot.bare === 'diameter' ? slot.bare : 'other';
}

const quantitiesOf = (value: Value): readonly Quantity[] => {
  if (value.kind === 'quantity') return [value];
  if (value.kind === 'interval') return value.from === null ? [value.to] : [value.from, value.to];
  return [];
};

const isCount = (slot: Slot | null): boolean => slot !== null && !slot.accepts.some(({ kind }) => kind === 'size');

function amountsOfValue(value: Value, slot: Slot | null): readonly Amount[] {
  const role = roleOf(slot);
  if (value.kind === 'list') return value.values.flatMap((each) => amountsOfValue(each, slot));
  if (value.kind !== 'product') return quantitiesOf(value).map((quantity) => ({ quantity, role, slot }));
  const [first, second] = value.factors;
  return [
    { quantity: first, role: isCount(slot) ? 'count' : role, slot },
    { quantity: second, role, slot },
  ];
}

const amountsOfItem = (row: Row | null, item: Item): readonly Amount[] =>
  amountsOfValue(item.value, slotOf(row, item.slot));

/** Every number on a line that was read, in the order of the line. */
export const amountsOf = rememberedOfLine((line: Line): readonly Amount[] => {
  const row = bodyRowOf(line);
  const depths = line.depths === null ? [] : quantitiesOf(line.depths);
  const leading = depths.map((quantity): Amount => ({ quantity, role: 'depth', slot: null }));
  return [...leading, ...line.items.flatMap((item) => amountsOfItem(row, item))];
});

const bareUnits = (units: FileUnits): Readonly<Record<Role, string | null>> => ({
  depth: units.depth,
  diameter: units.diameter,
  time: 'min',
  count: null,
  other: null,
});

/** The unit that a number is read in: its own, else the file's for its place; null where it has none. */
export function unitOf({ quantity, role }: Amount, units: FileUnits): Unit | null {
  const bare = bareUnits(units)[role];
  const unit = quantity.unit ?? (bare === null ? null : (unitById(bare) ?? null));
  return unit === null ? null : withGallon(unit, units.gallon);
}

/** The value of a number in SI; null for `?`, for counts, and for a gallon that the file does not name. */
export function siOf(amount: Amount, units: FileUnits): number | null {
  const unit = unitOf(amount, units);
  const { number, minus, plus } = amount.quantity;
  if (unit === null || number === null || unit.gallon) return null;
  const aboveGround = plus && amount.role === 'depth';
  return toSi(minus || aboveGround ? -number : number, unit);
}
