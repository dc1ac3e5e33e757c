import { type Drawing, smallestType } from '../../drawing/index.ts';

/* Smaller type than this is not read on paper without a glass: common practice, no source. */
const leastPoints = 5;

/** A sentence about words that are too small to be read on paper; none where they are not. */
export function smallTypeText(sheets: readonly Drawing[]): string[] {
  const least = sheets.reduce((size, sheet) => Math.min(size, smallestType(sheet) ?? size), Number.POSITIVE_INFINITY);
  if (least >= leastPoints - 1e-6) return [];
  const size = Math.floor(least * 10) / 10;
  return [
    `To fit on one sheet of paper the words are set down to ${size} pt, smaller than ${leastPoints} pt; on several sheets they keep their size (--layout pages).`,
  ];
}
