export type { ColumnId } from './columns/column.ts';
export type { Noticed } from './findings-html.ts';
export type { Theme } from './paints.ts';
export { previewSections } from './preview.ts';
export { columnIds, type Drawing, type DrawOptions, defaultDrawOptions, drawWell } from './scene.ts';
export { columnTitle } from './sheets.ts';
export { drawingFile, drawingSvg } from './svg.ts';
