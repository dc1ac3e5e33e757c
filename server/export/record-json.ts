import type { Record as WellRecord } from '../record/record.ts';

/** The record as JSON, by the schema of `recordSchema`; what is no number becomes null. The same text for the same record. */
export const recordJson = (record: WellRecord): string => `${JSON.stringify(record, null, 2)}\n`;
