import type { TextShape } from './shapes.ts';
import { spread } from './spread.ts';
import { rowHeight, type Type, textRow, wrapped } from './text.ts';

export interface LabelRow {
  readonly text: string;
  readonly type: Type;
}

/** Words that stand beside the drawing and speak of one depth. */
export interface Label {
  readonly name: string;
  readonly line: number | null;
  readonly title: string;
  /** Depth in metres; null where none is known: such labels stand last. */
  readonly at: number | null;
  /** Diameter in metres of the part it speaks of, which its leader goes to; null for the wall of the hole. */
  readonly diameter: number | null;
  readonly rows: readonly LabelRow[];
}

export interface PlacedLabel {
  readonly label: Label;
  /** Where its leader starts from, in mm; null where no depth is known. */
  readonly from: number | null;
  readonly top: number;
  readonly height: number;
}

const gap = 0.9;

/** Height in mm of a label with the space under it. */
export const labelHeight = (label: Label): number =>
  label.rows.reduce((height, row) => height + rowHeight(row.type), gap);

export const labelsHeight = (labels: readonly Label[]): number =>
  labels.reduce((height, label) => height + labelHeight(label), 0);

/** The text in rows of one type, at most `width` mm wide. */
export const rowsOf = (text: string, type: Type, width: number, most = 4): LabelRow[] =>
  wrapped(text, type, width, most).map((row) => ({ text: row, type }));

const byDepth = (a: Label, b: Label): number =>
  (a.at ?? Number.POSITIVE_INFINITY) === (b.at ?? Number.POSITIVE_INFINITY)
    ? 0
    : (a.at ?? Number.POSITIVE_INFINITY) - (b.at ?? Number.POSITIVE_INFINITY);

/**
 * Places for labels, none over another: each as near to its depth as the others allow. `rise` is how much of a label
 * stands above its depth: 0 for its top at the depth, 0.5 for its middle.
 */
export function placeLabels(
  labels: readonly Label[],
  toY: (depth: number) => number,
  top: number,
  bottom: number,
  rise: number,
): PlacedLabel[] {
  const sorted = [...labels].sort(byDepth);
  const heights = sorted.map(labelHeight);
  const starts = sorted.map((label) => (label.at === null ? null : toY(label.at)));
  const wishes = sorted.map((_, n) => ({
    at: (starts[n] ?? bottom) - rise * (heights[n] ?? 0),
    height: heights[n] ?? 0,
  }));
  const tops = spread(wishes, top, bottom);
  return sorted.map((label, n) => ({ label, from: starts[n] ?? null, top: tops[n] ?? top, height: heights[n] ?? 0 }));
}

/** The rows of a placed label, from `x` on. */
export function labelText(placed: PlacedLabel, x: number): TextShape[] {
  let y = placed.top + gap / 2;
  return placed.label.rows.map((row) => {
    const shape = textRow(row.text, x, y, row.type);
    y += rowHeight(row.type);
    return shape;
  });
}
