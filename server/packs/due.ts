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
