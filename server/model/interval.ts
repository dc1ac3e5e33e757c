import type { Columns } from '../../grammar/span.ts';
import type { Interval as WrittenInterval } from '../../grammar/tree.ts';
import type { Depth, Interval } from './log.ts';
import { depthOf, unknownDepth } from './measure.ts';
import { type Source, spanOf, valuesIn, wholeSpan } from './source.ts';

/** Ground level, as the top of a first layer that begins with the dash. */
const groundLevel = (source: Source, at: Columns): Depth => ({
  ...unknownDepth(source, at),
  value: 0,
  number: 0,
  written: '0',
});

/** An interval of the text; one that begins with the dash has `above` for its top. */
const intervalOf = (source: Source, interval: WrittenInterval, above: Depth | null): Interval => ({
  top: interval.from ? depthOf(source, interval.from) : above,
  bottom: depthOf(source, interval.to),
  continued: interval.from === null,
  span: spanOf(source, interval),
});

/** The interval that a line begins with; null where it begins with none. */
export function leadingInterval(source: Source): Interval | null {
  const { depths } = source.line;
  return depths?.kind === 'interval' ? intervalOf(source, depths, source.above) : null;
}

/** The interval that a line begins with, without ends where it begins with none. */
export const intervalAtStart = (source: Source): Interval =>
  leadingInterval(source) ?? { top: null, bottom: null, continued: false, span: wholeSpan(source) };

/** As `intervalAtStart`, for sections whose first line starts at ground level. */
export function intervalFromGround(source: Source): Interval {
  const { depths } = source.line;
  if (depths?.kind !== 'interval') return intervalAtStart(source);
  const above = depths.from === null ? (source.above ?? groundLevel(source, depths.dash)) : null;
  return intervalOf(source, depths, above);
}

/** The single depth that a line begins with. */
export function leadingDepth(source: Source, datum: Depth['datum'] = 'bgs'): Depth | null {
  const { depths } = source.line;
  return depths?.kind === 'quantity' ? depthOf(source, depths, datum) : null;
}

/** Every interval in a slot. */
export const intervalsIn = (source: Source, slot: string): Interval[] =>
  valuesIn(source, slot).flatMap((value) => (value.kind === 'interval' ? [intervalOf(source, value, null)] : []));
