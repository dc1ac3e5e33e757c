import type { Slot } from '../../../../grammar/table.ts';
import type { Item, Line, Quantity, Value } from '../../../../grammar/tree.ts';
import { bodyRowOf, type Role, roleOf } from '../../amounts.ts';

/** Numbers of one item that share a unit, which stands behind the last of them, or have none. */
export interface Group {
  readonly quantities: readonly Quantity[];
  readonly role: Role;
  readonly slot: string | null;
  /** True where no other number and no other unit of the same item stands behind these. */
  readonly isLast: boolean;
}

const saysNothing = ({ number, unitAt }: Quantity): boolean => number === null && unitAt === null;

/** A unit counts for the numbers before it that took it, and for no other. */
function sharing(quantities: readonly Quantity[]): readonly (readonly Quantity[])[] {
  if (quantities.every(({ unit }) => unit === null)) return [quantities];
  const runs: Quantity[][] = [];
  let isOpen = false;
  for (const quantity of quantities) {
    if (isOpen && quantity.unit !== null) runs.at(-1)?.push(quantity);
    else runs.push([quantity]);
    isOpen = quantity.unit !== null && quantity.unitAt === null && quantity.form !== 'feet-inches';
  }
  return runs;
}

function groupsOf(value: Value, role: Role, slot: Slot | null): readonly Group[] {
  const groups = (all: readonly Quantity[]): readonly Group[] =>
    sharing(all).map((quantities, at, runs) => ({
      quantities,
      role,
      slot: slot?.slot ?? null,
      isLast: runs.slice(at + 1).every((others) => others.every(saysNothing)),
    }));
  if (value.kind === 'quantity') return groups([value]);
  if (value.kind === 'interval') return groups(value.from === null ? [value.to] : [value.from, value.to]);
  if (value.kind === 'list') return value.values.flatMap((each) => groupsOf(each, role, slot));
  if (value.kind !== 'product') return [];
  const isSize = slot?.accepts.some(({ kind }) => kind === 'size') ?? false;
  return groups(isSize ? value.factors : [value.factors[1]]);
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
