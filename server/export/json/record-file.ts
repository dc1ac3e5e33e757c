import * as z from 'zod';
import { Record as WellRecord } from '../../record/record.ts';

/** A record as a file: what was computed, and the lines of the log that its places count in. */
export const RecordFile = WellRecord.extend({
  /** The log as it was written, line by line, with its comments. */
  source: z.array(z.string()),
});
export type RecordFile = z.infer<typeof RecordFile>;
