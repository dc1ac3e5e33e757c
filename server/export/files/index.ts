import type { ExportFormat } from '../format.ts';
import { type DrawFile, drawFiles, noFileWishes } from './draw-files.ts';

export { type DrawFile, drawFiles, type FileWishes, noFileWishes } from './draw-files.ts';

const format = (id: DrawFile, title: string): ExportFormat => ({
  id,
  title,
  extension: id,
  many: false,
  make: (record, context) => drawFiles[id](record, context, noFileWishes),
});

/** The drawing as picture files, and the record as one page. */
export const fileFormats: readonly ExportFormat[] = [
  format('svg', 'Drawing (SVG)'),
  format('png', 'Drawing as a picture (PNG)'),
  format('pdf', 'Drawing for paper (PDF)'),
  format('html', 'Record for print (HTML)'),
];
