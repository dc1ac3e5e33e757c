import type { RecordContext } from '../context.ts';
import type { Figure } from '../record.ts';

/** One family of figures: all that it can say of a log, in the order of the file. */
export type Family = (context: RecordContext) => Figure[];
