import type { ExportContext } from '../../server/export/format.ts';
import { shippedFile } from './shipped-file.ts';

/** What an exporter is told of a log that nothing was found in. */
export const contextOf = (text: string, name = 'well', findings: ExportContext['findings'] = []): ExportContext => ({
  source: text.split(/\r\n|\n|\r/),
  findings,
  name,
  today: '2026-12-31',
  asset: shippedFile,
});
