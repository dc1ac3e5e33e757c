export { computeRecord } from './compute-record.ts';
export { type Shown, type ShownText, show, textIn, unitLabel, unitsFor } from './display.ts';
export { daysLeft, dueText } from './due.ts';
export { type Digits, decimals, formatNumber, significant } from './format-number.ts';
export type { AnnulusPiece, DueDate, Figure, FigureInput, FillRecord, Record } from './record.ts';
export { depthText, stretchText } from './words.ts';
