import type { ExportContext } from '../../../server/export/format.ts';
import { shippedFile } from '../shipped-file.ts';

/** What a file is made with in tests. */
export const context: ExportContext = {
  source: [],
  findings: [],
  name: 'well',
  today: '2026-11-25',
  asset: shippedFile,
};
