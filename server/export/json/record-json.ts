import type { Record as WellRecord } from '../../record/record.ts';
import type { Exported, ExportFormat } from '../format.ts';

/** The record as JSON, by the schema of `recordSchema`; what is no number becomes null. The same text for the same record. */
export const recordJson = (record: WellRecord, source: readonly string[]): string =>
  `${JSON.stringify({ ...record, source }, null, 2)}\n`;

export const jsonFormat: ExportFormat = {
  id: 'json',
  title: 'Record (JSON)',
  extension: 'json',
  many: false,
  make: (record, { name, source }): Exported => ({
    files: [{ name: `${name}.json`, content: recordJson(record, source) }],
    left: [],
  }),
};
