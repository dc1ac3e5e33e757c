export type { ColumnId } from './columns/column.ts';
export type { Theme } from './paints.ts';
export { type Noticed, type PreviewOptions, previewBody } from './preview.ts';
export { columnIds, type Drawing, type DrawOptions, defaultDrawOptions, drawWell } from './scene.ts';
export { drawingFile, drawingSvg } from './svg.ts';
