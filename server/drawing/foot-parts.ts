import type { FootNote } from './foot-notes.ts';
import type { Part } from './shapes.ts';
import { rowHeight, textRow, types, wrapped } from './text.ts';

const mostRows = 12;

/** Notes in rows below a drawing, and the height in mm that they take. */
export function footParts(
  notes: readonly FootNote[],
  left: number,
  top: number,
  width: number,
): { parts: Part[]; height: number } {
  let y = top;
  const parts = notes.map(({ line, text }) => {
    const rows = wrapped(text, types.small, width, mostRows);
    const shapes = rows.map((row, n) => textRow(row, left, y + n * rowHeight(types.small), types.small));
    y += rows.length * rowHeight(types.small) + 0.3;
    return { name: 'foot-note', line, title: text, shapes };
  });
  return { parts, height: y - top };
}

/** Notes that come from no one line. */
export const plainNotes = (texts: readonly string[]): FootNote[] => texts.map((text) => ({ line: null, text }));
