import type { Accepts, Slot } from './table.ts';
import type { Interval, Moment, Period, Product, Quantity, Value } from './tree.ts';

type Candidate = Exclude<Value, { kind: 'term' | 'description' | 'list' | 'flag' }>;

/** True for a length, or a bare number that may be one. */
export const isLengthLike = (value: Quantity): boolean =>
  value.high === null && (value.unit === null || value.unit.dimension === 'length');

const isBare = (value: Quantity): boolean => value.unit === null;

/** `0.5 - 0.6` of bare numbers, as one value with two ends. */
const rangeOf = (interval: Interval): Quantity | null =>
  interval.from === null
    ? null
    : {
        ...interval.from,
        high: interval.to.number,
        end: interval.end,
        doubtful: interval.from.doubtful || interval.to.doubtful,
      };

/** A unit on either side of `x` serves both sides. */
function withSharedUnit(product: Product): Product {
  const [a, b] = product.factors;
  return {
    ...product,
    factors: [
      { ...a, unit: a.unit ?? b.unit },
      { ...b, unit: b.unit ?? a.unit },
    ],
  };
}

const dimensionOf = (value: Quantity): string | null => value.unit?.dimension ?? null;

function asQuantity(slot: Slot, dimension: string, value: Candidate): Value | null {
  if (value.kind === 'product' && (dimension === 'volume' || dimension === 'mass') && value.counted === null)
    return dimensionOf(value.factors[1]) === dimension && isBare(value.factors[0]) ? value : null;
  if (value.kind === 'interval' && slot.labelled === 'must' && dimension !== 'length') return null;
  if (value.kind !== 'quantity') return null;
  if (value.unit) return value.unit.dimension === dimension ? value : null;
  return slot.bare !== null && (value.number !== null || value.figure === '?') ? value : null;
}

const asNumber = (value: Candidate): Value | null => {
  if (value.kind === 'interval') return rangeOf(value);
  return value.kind === 'quantity' && isBare(value) ? value : null;
};

const asYear = (value: Candidate): Value | null =>
  value.kind === 'quantity' && isBare(value) && /^(1[89]|20)\d\d$/.test(value.figure) ? value : null;

/** `0930`: a time of day with no colon, which would be read as 930 minutes. */
export const isMilitaryTime = (value: Quantity): boolean => isBare(value) && /^0\d{3}$/.test(value.figure);

const asElapsed = (value: Candidate): Value | null => {
  if (value.kind === 'moment') return value.date === null && value.end - value.start >= 5 ? value : null;
  if (value.kind !== 'quantity' || isMilitaryTime(value)) return null;
  return value.unit === null || value.unit.dimension === 'time' ? value : null;
};

const asSize = (value: Candidate): Value | null => {
  if (value.kind === 'product')
    return value.counted === null && value.factors.every(isLengthLike) ? withSharedUnit(value) : null;
  return value.kind === 'quantity' && isLengthLike(value) && !value.plus ? value : null;
};

const asBags = (value: Candidate): Value | null => {
  if (value.kind === 'product') {
    const [count, each] = value.factors;
    return isBare(count) && (dimensionOf(each) === 'mass' || (value.counted !== null && isBare(each))) ? value : null;
  }
  return value.kind === 'quantity' && dimensionOf(value) === 'count' ? value : null;
};

const asListed = (value: Candidate): Value | null => {
  if (value.kind === 'product') return value.factors.every(isLengthLike) && value.counted === null ? value : null;
  return value.kind === 'quantity' && isLengthLike(value) ? value : null;
};

const same =
  <K extends Candidate['kind']>(kind: K) =>
  (value: Candidate): Value | null =>
    value.kind === kind ? value : null;

const asMoment = (value: Candidate): Moment | null => (value.kind === 'moment' ? value : null);
const asPeriod = (value: Candidate): Period | null => (value.kind === 'period' ? value : null);

function accept(slot: Slot, each: Accepts, value: Candidate): Value | null {
  switch (each.kind) {
    case 'quantity':
      return asQuantity(slot, each.dimension, value);
    case 'number':
      return asNumber(value);
    case 'year':
      return asYear(value);
    case 'elapsed':
      return asElapsed(value);
    case 'size':
      return asSize(value);
    case 'bags':
      return asBags(value);
    case 'list':
      return asListed(value);
    case 'interval':
      return same('interval')(value);
    case 'moment':
      return asMoment(value);
    case 'period':
      return asPeriod(value);
    case 'grading':
      return same('grading')(value);
    case 'hash-number':
      return same('hash-number')(value);
    case 'text':
      return same('text')(value);
    case 'terms':
    case 'flag':
    case 'description':
      return null;
  }
}

/** The value as a slot takes it, or null where it does not fit. */
export function fits(slot: Slot, value: Candidate): Value | null {
  for (const each of slot.accepts) {
    const found = accept(slot, each, value);
    if (found) return found;
  }
  return null;
}
