import * as z from 'zod';
import { clause } from './clause.ts';

/** Something that must be sent in, so many days after an event. */
export const Due = z.strictObject({
  what: z.enum(['record', 'copy for the owner', 'plugging report']),
  days: z.number().int().positive(),
  /** The event that starts the clock. */
  event: z.enum(['finished', 'abandoned']),
  /** True where the text that was seen does not name the event. */
  assumed: z.boolean(),
  ...clause,
});
export type Due = z.infer<typeof Due>;

const day = 86_400_000;

const midnight = (date: string): number => Date.parse(`${date}T00:00:00Z`);

/** The date `days` after `date`, both YYYY-MM-DD; null for a date that no calendar has. */
export function dayAfter(date: string, days: number): string | null {
  const at = midnight(date) + days * day;
  return Number.isFinite(at) ? new Date(at).toISOString().slice(0, 10) : null;
}

/** Days from one date to another; negative where the second is earlier, not a number for a date that no calendar has. */
export const daysBetween = (from: string, to: string): number => Math.round((midnight(to) - midnight(from)) / day);
