import type { Quantity } from '../../grammar/tree.ts';
import { exact, type Unit, unitById } from '../../grammar/units.ts';
import type { Measure } from './log.ts';
import { measured, unknownMeasure } from './measure.ts';
import { itemIn, type Source, spanOf, writtenAt } from './source.ts';

const millimetre = unitById('mm') ?? null;

/** Thousandths of an inch, as slot numbers count. */
const inThousandths = (number: number | null) => ({
  value: number === null ? null : number * 0.001 * exact.inch,
  number: number === null ? null : number / 1000,
  unit: 'in',
  decimals: 3,
});

/** A bare slot of 1 or more in a file of inches is a slot number; less than 1 are inches. In any metric file it is in mm. */
function bareSlot(source: Source, quantity: Quantity, diameter: Unit): Measure {
  if (diameter.id !== 'in') return measured(source, quantity, millimetre);
  const plain = measured(source, quantity, diameter);
  if (quantity.number === null || quantity.number < 1) return plain;
  const high = quantity.high === null ? null : inThousandths(quantity.high).value;
  return { ...plain, ...inThousandths(quantity.number), high };
}

/** Width of the slots of a screen, m. `#10` is 0.010 in. */
export function slotWidthOf(source: Source): Measure | null {
  const value = itemIn(source, 'slot')?.value;
  const { diameter } = source.setting;
  if (value?.kind === 'quantity') {
    return value.unit === null ? bareSlot(source, value, diameter) : measured(source, value, null);
  }
  if (value?.kind === 'unknown') return unknownMeasure(source, value, diameter.id);
  if (value?.kind !== 'hash-number') return null;
  const blank = unknownMeasure(source, value, 'in');
  return { ...blank, ...inThousandths(value.number), written: writtenAt(source, value), span: spanOf(source, value) };
}
