import { cleanText } from './escape.ts';
import type { Paint, TextShape } from './shapes.ts';

/** The type that a row of text is set in; `size` in mm. */
export interface Type {
  readonly size: number;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly paint: Paint;
}

/** The sizes of the drawing, from its name down to the small print. */
export const types = {
  name: { size: 6, bold: true, italic: false, paint: 'ink' },
  place: { size: 3.2, bold: false, italic: false, paint: 'ink' },
  head: { size: 2.4, bold: true, italic: false, paint: 'ink' },
  body: { size: 2.5, bold: false, italic: false, paint: 'ink' },
  remark: { size: 2.3, bold: false, italic: true, paint: 'quiet-ink' },
  small: { size: 2.2, bold: false, italic: false, paint: 'quiet-ink' },
  number: { size: 2.3, bold: false, italic: false, paint: 'ink' },
  water: { size: 2.4, bold: false, italic: false, paint: 'water' },
  doubt: { size: 2.6, bold: true, italic: false, paint: 'doubt' },
} as const satisfies { [name: string]: Type };

/* Advance widths of the Helvetica metrics, in thousandths of the size, for U+0020 to U+007E; from memory. Arial and
   Liberation Sans share them. */
const advances = (
  '278 278 355 556 556 889 667 191 333 333 389 584 278 333 278 278 556 556 556 556 556 556 556 556 556 556 278 278 ' +
  '584 584 584 556 1015 667 667 722 722 667 611 778 722 278 500 667 556 833 722 778 667 778 722 667 611 722 667 944 ' +
  '667 667 611 278 278 278 469 556 333 556 556 500 556 556 278 556 556 222 222 500 222 833 556 556 556 556 333 500 ' +
  '278 556 500 722 500 500 500 334 260 334 584'
)
  .split(' ')
  .map(Number);

const otherAdvances = new Map(
  [...'–×−·°²³½¼¾…—µ'].map((mark, n) => [
    mark,
    [556, 584, 584, 333, 400, 333, 333, 834, 834, 834, 1000, 1000, 576][n] ?? 1000,
  ]),
);
const boldness = 1.1;

function advanceOf(mark: string): number {
  const known = advances[(mark.codePointAt(0) ?? 0) - 0x20] ?? otherAdvances.get(mark);
  if (known !== undefined) return known;
  const base = mark.normalize('NFD')[0] ?? mark;
  return advances[(base.codePointAt(0) ?? 0) - 0x20] ?? 1000;
}

/* Most texts are plain: their marks are looked up by code, without a string for each. */
const plainText = /^[\x20-\x7e]*$/;

function thousandthsOf(text: string): number {
  let sum = 0;
  if (plainText.test(text))
    for (let at = 0; at < text.length; at += 1) sum += advances[text.charCodeAt(at) - 0x20] ?? 0;
  else for (const mark of text) sum += advanceOf(mark);
  return sum;
}

/** Width of a row of text in mm, by the metrics of the type. */
export function textWidth(text: string, type: Type): number {
  const thousandths = thousandthsOf(text);
  return (thousandths * type.size * (type.bold ? boldness : 1)) / 1000;
}

/** Height of a row with the space under it, in mm. */
export const rowHeight = (type: Type): number => type.size * 1.26;

/** Baseline of a row below its top, in mm. */
export const ascent = (type: Type): number => type.size * 0.92;

/** As much of the text as fits, with an ellipsis where it does not. */
export function fitted(text: string, type: Type, width: number): string {
  if (textWidth(text, type) <= width) return text;
  const marks = [...text];
  let kept = '';
  let used = textWidth('…', type);
  for (const mark of marks) {
    used += textWidth(mark, type);
    if (used > width) break;
    kept += mark;
  }
  return `${kept.trimEnd()}…`;
}

function* piecesOf(word: string, type: Type, width: number): Generator<string> {
  let piece = '';
  let used = 0;
  for (const mark of word) {
    const advance = textWidth(mark, type);
    if (piece !== '' && used + advance > width) {
      yield piece;
      piece = '';
      used = 0;
    }
    piece += mark;
    used += advance;
  }
  yield piece;
}

/* A record may hold a text of megabytes; a drawing shows its beginning. */
const longestText = 2000;

/** The text broken into rows of at most `width` mm, at blanks where there are any; at most `most` rows. */
export function wrapped(text: string, type: Type, width: number, most = 6): string[] {
  const words = cleanText(text.slice(0, longestText)).split(/\s+/).filter(Boolean);
  const blank = textWidth(' ', type);
  const rows: string[] = [];
  let row = '';
  let used = 0;
  const take = (piece: string, size: number): void => {
    if (row !== '' && used + blank + size > width) {
      rows.push(row);
      row = '';
    }
    used = row === '' ? size : used + blank + size;
    row = row === '' ? piece : `${row} ${piece}`;
  };
  for (const word of words) {
    const size = textWidth(word, type);
    if (size <= width) take(word, size);
    else for (const piece of piecesOf(word, type, width)) take(piece, textWidth(piece, type));
  }
  if (row !== '') rows.push(row);
  if (rows.length <= most) return rows;
  return [...rows.slice(0, most - 1), fitted(rows.slice(most - 1).join(' '), type, width)];
}

/** A row of text whose top-left (or, by its anchor, top-middle or top-right) is at x, y. */
export const textRow = (
  text: string,
  x: number,
  y: number,
  type: Type,
  anchor: TextShape['anchor'] = 'start',
): TextShape => ({
  kind: 'text',
  text,
  x,
  y: y + ascent(type),
  size: type.size,
  width: textWidth(text, type),
  bold: type.bold,
  italic: type.italic,
  anchor,
  paint: type.paint,
});
