import type { ColumnId } from './columns/column.ts';

/** Sheets of paper, in mm: A4 of ISO 216, letter of ANSI/ASME Y14.1. */
export const papers = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;

export type Paper = keyof typeof papers;

/** `continuous`: as long as it needs; `page`: all on one sheet of paper; `pages`: on as many as the scale asks for. */
export type Layout = 'continuous' | 'page' | 'pages';

/** What a drawing shows, and on what. */
export interface DrawingOptions {
  /** The columns, in this order; null for all. */
  readonly columns: readonly ColumnId[] | null;
  /** Width of a continuous sheet in mm. */
  readonly widthMm: number;
  /** True for a title block over the columns. */
  readonly title: boolean;
  readonly layout: Layout;
  readonly paper: Paper;
  /** Depths are drawn 1 to this, where the words find room; null for a scale that suits the log. */
  readonly scale: number | null;
}

export const defaultDrawingOptions: DrawingOptions = {
  columns: null,
  widthMm: 190,
  title: true,
  layout: 'continuous',
  paper: 'a4',
  scale: null,
};
