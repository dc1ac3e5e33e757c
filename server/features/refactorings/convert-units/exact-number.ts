/**
 * A US unit and the metric one that takes its place. One US unit is `numerator / denominator` metric ones. A number that
 * is converted gets so many digits more behind the point: enough that it can be told from its neighbours, so that the way
 * back finds the very number that was there.
 */
export interface UnitPair {
  readonly us: string;
  readonly metric: string;
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly moreInMetric: number;
  readonly moreInUs: number;
}

/** A decimal number as it is written, with no sign, no idle zero before it and no bare point. */
export const isPlainNumber = (text: string): boolean => /^(0|[1-9]\d*)(\.\d+)?$/.test(text);

const decimalsOf = (text: string): number =>
  text.length - 1 - (text.includes('.') ? text.indexOf('.') : text.length - 1);

const digitsOf = (text: string): bigint => BigInt(text.replace('.', ''));

function written(digits: bigint, decimals: number): string {
  const text = String(digits).padStart(decimals + 1, '0');
  return decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
}

/** `text * numerator / denominator`, rounded to so many decimals. */
function scaled(text: string, numerator: bigint, denominator: bigint, decimals: number): string {
  const above = digitsOf(text) * numerator * 10n ** BigInt(decimals);
  const below = denominator * 10n ** BigInt(decimalsOf(text));
  return written((2n * above + below) / (2n * below), decimals);
}

const metricFrom = (us: string, { numerator, denominator }: UnitPair, decimals: number): string =>
  scaled(us, numerator, denominator, decimals);

const usFrom = (metric: string, { numerator, denominator }: UnitPair, decimals: number): string =>
  scaled(metric, denominator, numerator, decimals);

const roundedToMetric = (us: string, pair: UnitPair): string =>
  metricFrom(us, pair, decimalsOf(us) + pair.moreInMetric);
const roundedToUs = (metric: string, pair: UnitPair): string =>
  usFrom(metric, pair, decimalsOf(metric) + pair.moreInUs);

/** The US number from which a metric one was made; null where it was not made from one. */
function usBehind(metric: string, pair: UnitPair): string | null {
  const decimals = decimalsOf(metric) - pair.moreInMetric;
  if (decimals < 0) return null;
  const us = usFrom(metric, pair, decimals);
  return roundedToMetric(us, pair) === metric && metricBehind(us, pair) === null ? us : null;
}

/** The metric number from which a US one was made; null where it was not made from one. Fewer digits at each step. */
function metricBehind(us: string, pair: UnitPair): string | null {
  const decimals = decimalsOf(us) - pair.moreInUs;
  if (decimals < 0) return null;
  const metric = metricFrom(us, pair, decimals);
  return roundedToUs(metric, pair) === us && usBehind(metric, pair) === null ? metric : null;
}

const isZero = (text: string): boolean => /^[0.]+$/.test(text);

/** A plain number in the other system of units; converted once more it is the same text again. */
export function convertedNumber(text: string, pair: UnitPair, toUs: boolean): string {
  if (isZero(text)) return text;
  return toUs
    ? (usBehind(text, pair) ?? roundedToUs(text, pair))
    : (metricBehind(text, pair) ?? roundedToMetric(text, pair));
}
