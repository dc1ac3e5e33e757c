import type { Record as WellRecord } from '../record/record.ts';
import { type DrawingOptions, defaultDrawingOptions } from './options.ts';
import { drawOnePage, drawPages } from './pages.ts';
import { type Drawing, drawWell } from './scene.ts';
import { drawingFile } from './svg.ts';

/** The log as the options want it: one sheet as long as it needs, one sheet of paper, or several. */
export function drawSheets(record: WellRecord, options: Partial<DrawingOptions> = {}): Drawing[] {
  const all = { ...defaultDrawingOptions, ...options };
  if (all.layout === 'pages') return drawPages(record, all);
  return [all.layout === 'page' ? drawOnePage(record, all) : drawWell(record, all)];
}

/** The log as one SVG file. */
export const drawing = (record: WellRecord, options: Partial<DrawingOptions> = {}): string =>
  drawingFile(drawWell(record, options));

/** The log as SVG files, a sheet of paper each. */
export const drawingPages = (record: WellRecord, options: Partial<DrawingOptions> = {}): string[] =>
  drawSheets(record, { ...options, layout: options.layout ?? 'pages' }).map((sheet) => drawingFile(sheet));
