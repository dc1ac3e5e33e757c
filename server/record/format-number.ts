/** How many digits a number is shown with: a count of significant digits, or of decimals. */
export type Digits =
  | { readonly kind: 'significant'; readonly count: number }
  | { readonly kind: 'decimals'; readonly count: number };

export const significant = (count: number): Digits => ({ kind: 'significant', count });
export const decimals = (count: number): Digits => ({ kind: 'decimals', count });

const mostDecimals = 12;
/* What is less has no digit among so many decimals. */
const leastShown = 0.5 * 10 ** -mostDecimals;

const clampDecimals = (count: number): number => Math.min(mostDecimals, Math.max(0, count));

/** Decimals that show `value` with that many significant digits; 0 where the last of them stands before the point. */
function decimalsFor(value: number, count: number): number {
  if (value === 0) return clampDecimals(count - 1);
  const rounded = Number(value.toPrecision(Math.min(Math.max(count, 1), 15)));
  return clampDecimals(count - 1 - Math.floor(Math.log10(Math.abs(rounded))));
}

/** `value` as plain digits, never with an exponent: 0.20466 with three significant digits is `0.205`. */
export function formatNumber(value: number, digits: Digits): string {
  if (!Number.isFinite(value)) return '?';
  if (digits.kind === 'decimals') return fixed(value, clampDecimals(digits.count));
  const seen = Math.abs(value) < leastShown ? 0 : value;
  const rounded = Number(seen.toPrecision(Math.min(Math.max(digits.count, 1), 15)));
  return fixed(rounded, decimalsFor(seen, digits.count));
}

/** From here on `toFixed` writes an exponent. */
const hugeFrom = 1e21;

const fixed = (value: number, places: number): string =>
  Math.abs(value) >= hugeFrom ? BigInt(value).toString() : withoutMinusZero(value.toFixed(places));

const withoutMinusZero = (text: string): string => (/^-0(\.0*)?$/.test(text) ? text.slice(1) : text);

/** How many significant digits `text` shows: `0.290` shows three, `61` two. */
export function significantDigitsOf(text: string): number {
  const digits = text.replace(/[^0-9]/g, '').replace(/^0+/, '');
  return Math.max(1, digits.length);
}

/** How many decimals `text` shows. */
export const decimalsOf = (text: string): number => text.split('.')[1]?.length ?? 0;
