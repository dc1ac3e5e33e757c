import type { Moment, Period } from '../../model/log.ts';

export type Order = 'before' | 'after' | 'unclear';

/**
 * Whether the first moment lies before the second: by date, and by time of day where both fall on one day.
 * Of two equal times the first counts as before.
 */
export function orderOf(first: Moment | null, second: Moment | null): Order {
  if (!first?.date || !second?.date || !first.valid || !second.valid) return 'unclear';
  if (first.date !== second.date) return first.date < second.date ? 'before' : 'after';
  if (!first.time || !second.time) return 'unclear';
  return first.time <= second.time ? 'before' : 'after';
}

/** When a period begins, and when it ends; of a single moment both are the same. */
export const startOf = (period: Period | null): Moment | null => period?.from ?? period?.to ?? null;
export const endOf = (period: Period | null): Moment | null => period?.to ?? period?.from ?? null;
