import type { Slot } from '../../../../grammar/table.ts';
import type { Item, Line, Quantity, Value } from '../../../../grammar/tree.ts';
import { bodyRowOf, type Role, roleOf } from '../../amounts.ts';

/** Numbers of one item that may share a unit. */
export interface Group {
  readonly quantities: readonly Quantity[];
  readonly role: Role;
  readonly slot: string | null;
}

function groupsOf(value: Value, role: Role, slot: Slot | null): readonly Group[] {
  const group = (quantities: readonly Quantity[]): Group => ({ quantities, role, slot: slot?.slot ?? null });
  if (value.kind === 'quantity') return [group([value])];
  if (value.kind === 'interval') return [group(value.from === null ? [value.to] : [value.from, value.to])];
  if (value.kind === 'list') return value.values.flatMap((each) => groupsOf(each, role, slot));
  if (value.kind !== 'product') return [];
  const isSize = slot?.accepts.some(({ kind }) => kind === 'size') ?? false;
  return [group(isSize ? value.factors : [value.factors[1]])];
}

function groupsOfItem(line: Line, item: Item): readonly Group[] {
  if (line.row === 'place') return item.slot === 'accuracy' ? groupsOf(item.value, 'depth', null) : [];
  const slot = bodyRowOf(line)?.slots.find((each) => each.slot === item.slot) ?? null;
  return groupsOf(item.value, roleOf(slot), slot);
}

/** The numbers of a line that units can be asked of. */
export const groupsOfLine = (line: Line): readonly Group[] => [
  ...(line.depths === null ? [] : groupsOf(line.depths, 'depth', null)),
  ...line.items.flatMap((item) => groupsOfItem(line, item)),
];
