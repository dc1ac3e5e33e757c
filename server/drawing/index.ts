export type { ColumnId } from './columns/column.ts';
export { drawing, drawingPages, drawSheets } from './draw-sheets.ts';
export type { Noticed } from './findings-html.ts';
export { wellMap } from './map.ts';
export {
  type DrawingOptions,
  defaultDrawingOptions,
  type Layout,
  type Paper,
  papers,
} from './options.ts';
export type { FileTheme, Theme } from './paints.ts';
export { type NamedWell, nameOf } from './places.ts';
export { groutPlot } from './plots/grout-plot.ts';
export { plotSheets } from './plots/plot-sheets.ts';
export { testPlots } from './plots/test-plot.ts';
export { previewSections } from './preview.ts';
export { type Drawing, drawWell, type WellDrawing } from './scene.ts';
export { wellSection } from './section.ts';
export { columnTitle } from './sheets.ts';
export { smallestType } from './smallest-type.ts';
export { drawingFile, drawingSvg } from './svg.ts';
export { columnIds } from './tracks.ts';
