import type { Drawing } from '../../drawing/index.ts';

const textsOf = ({ parts }: Drawing): string[] =>
  parts.flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])));

/* Enough to know what kind of writing it is. */
const mostShown = 20;

/** A sentence that shows the characters of the sheets that the fonts do not have; none where they have them all. */
export function lackingText(sheets: readonly Drawing[], known: ReadonlySet<number>): string[] {
  const characters = new Set(sheets.flatMap(textsOf).join(''));
  const lacking = [...characters].filter((each) => !known.has(each.codePointAt(0) ?? 0)).sort();
  if (lacking.length === 0) return [];
  const shown = lacking.slice(0, mostShown).join(' ');
  const rest = lacking.length > mostShown ? ` and ${lacking.length - mostShown} more` : '';
  return [`Characters that the fonts of the file do not have stand as boxes or are left out: ${shown}${rest}.`];
}
