import type { Columns } from '../../grammar/span.ts';
import type { Product, Quantity, Value } from '../../grammar/tree.ts';
import { toSi, type Unit, withGallon } from '../../grammar/units.ts';
import type { Depth, Measure } from './log.ts';
import { bareUnit } from './setting.ts';
import { itemIn, type Source, slotOf, spanOf, valuesIn, writtenAt } from './source.ts';

/** How a number becomes SI: by its unit, as it stands (ratios, counts), or not at all. */
type Scale = Unit | 'ratio' | null;

const inSi = (number: number | null, scale: Scale): number | null => {
  if (number === null || scale === null) return null;
  if (scale === 'ratio') return number;
  return scale.gallon ? null : toSi(number, scale);
};

const nameOf = (scale: Scale): string => (scale === null || scale === 'ratio' ? '' : scale.id);

const signed = (number: number | null, negative: boolean): number | null =>
  number === null || !negative || number === 0 ? number : -number;

/** Scale of a quantity: its own unit, else the one that its place gives it, and the file's gallon. */
function scaleOf({ setting }: Source, { unit }: Quantity, bare: Unit | 'ratio' | null): Scale {
  const scale = unit ?? bare;
  return scale === null || scale === 'ratio' ? scale : withGallon(scale, setting.gallon);
}

/** A quantity as a measure; `bare` is the unit of a number that has none. */
export function measured(source: Source, quantity: Quantity, bare: Unit | 'ratio' | null): Measure {
  const scale = scaleOf(source, quantity, bare);
  const number = signed(quantity.number, quantity.minus);
  return {
    value: inSi(number, scale),
    high: inSi(quantity.high, scale),
    number,
    unit: nameOf(scale),
    unitWritten: quantity.unit !== null,
    decimals: quantity.decimals,
    bound: quantity.bound,
    written: writtenAt(source, quantity),
    approximate: quantity.approximate,
    doubtful: quantity.doubtful,
    span: spanOf(source, quantity),
  };
}

/** A lone `?`. */
export const unknownMeasure = (source: Source, at: Columns, unit: string): Measure => ({
  value: null,
  high: null,
  number: null,
  unit,
  unitWritten: false,
  decimals: 0,
  bound: null,
  written: writtenAt(source, at),
  approximate: false,
  doubtful: false,
  span: spanOf(source, at),
});

const times = (count: number | null, amount: number | null): number | null =>
  count === null || amount === null ? null : count * amount;

/** `3 x 0.1 m3` as one amount. */
function productMeasure(source: Source, product: Product, bare: Unit | 'ratio' | null): Measure {
  const [count, amount] = product.factors;
  const each = measured(source, amount, bare);
  return {
    ...each,
    value: times(count.number, each.value),
    number: times(count.number, each.number),
    written: writtenAt(source, product),
    approximate: count.approximate || amount.approximate,
    doubtful: count.doubtful || amount.doubtful,
    span: spanOf(source, product),
  };
}

/** Any value that can be one measure; null for words, dates and the like. */
export function measureOfValue(source: Source, value: Value, bare: Unit | 'ratio' | null): Measure | null {
  switch (value.kind) {
    case 'quantity':
      return measured(source, value, bare);
    case 'product':
      return productMeasure(source, value, bare);
    case 'unknown':
      return unknownMeasure(source, value, bare === 'ratio' ? '' : (bare?.id ?? ''));
    default:
      return null;
  }
}

/** The unit of bare numbers in a slot, by the table. */
function bareOf(source: Source, slot: string): Unit | 'ratio' | null {
  const bare = slotOf(source, slot)?.bare ?? null;
  return bare === 'none' ? 'ratio' : bareUnit(source.setting, bare);
}

/** The measure in a slot; null where the line has none. */
export function measureIn(source: Source, slot: string): Measure | null {
  const item = itemIn(source, slot);
  return item ? measureOfValue(source, item.value, bareOf(source, slot)) : null;
}

/** A number as it stands, of slots such as `sch`; null where there is none or it is `?`. */
export function numberIn(source: Source, slot: string): number | null {
  const value = itemIn(source, slot)?.value;
  return value?.kind === 'quantity' ? value.number : null;
}

/**
 * A quantity as a depth, metres below ground. Depths from the top of the casing and the bottom of the hole have no
 * value until the whole log is known.
 */
export function depthOf(source: Source, quantity: Quantity, datum: Depth['datum'] = 'bgs'): Depth {
  const scale = scaleOf(source, quantity, source.setting.depth);
  const number = signed(quantity.number, quantity.plus || quantity.minus);
  const from = quantity.datum ?? datum;
  return {
    value: from === 'toc' ? null : inSi(number, scale),
    high: inSi(quantity.high, scale),
    number,
    unit: nameOf(scale),
    unitWritten: quantity.unit !== null,
    decimals: quantity.decimals,
    bound: quantity.bound,
    written: writtenAt(source, quantity),
    approximate: quantity.approximate,
    doubtful: quantity.doubtful,
    span: spanOf(source, quantity),
    datum: from,
    td: quantity.td,
  };
}

export const unknownDepth = (source: Source, at: Columns): Depth => ({
  ...unknownMeasure(source, at, source.setting.depth.id),
  datum: 'bgs',
  td: false,
});

/** Any value that can be one depth. */
export function depthOfValue(source: Source, value: Value, datum: Depth['datum'] = 'bgs'): Depth | null {
  if (value.kind === 'quantity') return depthOf(source, value, datum);
  return value.kind === 'unknown' ? unknownDepth(source, value) : null;
}

/** The depth in a slot. */
export function depthIn(source: Source, slot: string, datum: Depth['datum'] = 'bgs'): Depth | null {
  const item = itemIn(source, slot);
  return item ? depthOfValue(source, item.value, datum) : null;
}

/** Every depth in a slot. */
export function depthsIn(source: Source, slot: string): Depth[] {
  const depths: Depth[] = [];
  for (const value of valuesIn(source, slot)) {
    const depth = depthOfValue(source, value);
    if (depth !== null) depths.push(depth);
  }
  return depths;
}
