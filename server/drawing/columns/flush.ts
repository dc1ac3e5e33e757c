import { yOf } from '../depth-scale.ts';
import { type Label, labelText, rowsOf } from '../labels.ts';
import { line, type Part, type Shape, stroked } from '../shapes.ts';
import type { Sheet } from '../sheet.ts';
import { types } from '../text.ts';
import { measureText, wordsText } from '../words.ts';
import type { Column, ColumnPlace } from './column.ts';
import { type Drilled, drilledOf } from './drilled.ts';

/** A stretch drilled with one flush at one rate. */
interface Flushed {
  readonly top: number;
  readonly bottom: number;
  readonly line: number;
  readonly text: string;
}

const flushText = ({ interval, head }: Drilled): string => {
  const words = wordsText(interval.flush.length > 0 ? interval.flush : head.flush);
  return [words, measureText(interval.flushRate)].filter(Boolean).join(' ');
};

const meet = 0.005;

/** Neighbours with the same flush as one stretch. */
function flushedOf(sheet: Sheet): Flushed[] {
  const stretches: Flushed[] = [];
  for (const drilled of drilledOf(sheet)) {
    const text = flushText(drilled);
    const last = stretches.at(-1);
    const { top, bottom } = drilled;
    if (last && last.text === text && Math.abs(last.bottom - top) < meet)
      stretches[stretches.length - 1] = { ...last, bottom };
    else if (text !== '') stretches.push({ top, bottom, line: drilled.interval.line, text });
  }
  return stretches;
}

const edge = stroked('ink', 0.18);
/* Room for the bracket before the words, in mm. */
const gutter = 2.4;

const bracket = ({ top, bottom }: Flushed, { box, scale }: ColumnPlace): Shape[] => {
  const x = box.x + 1.2;
  return [
    line(
      [
        [x + 0.7, yOf(scale, top)],
        [x, yOf(scale, top)],
        [x, yOf(scale, bottom)],
        [x + 0.7, yOf(scale, bottom)],
      ],
      edge,
    ),
  ];
};

const labelOf = (stretch: Flushed, width: number): Label => ({
  name: 'flush',
  line: stretch.line,
  title: `Flush: ${stretch.text}`,
  at: (stretch.top + stretch.bottom) / 2,
  diameter: null,
  rows: rowsOf(stretch.text, types.small, width - gutter - 0.4, 4),
});

/** What the hole was flushed with, against depth. */
export const flushColumn: Column = {
  id: 'flush',
  heading: () => 'Flush',
  subheading: () => '',
  width: 14,
  grows: false,
  rise: 0.5,
  isNeeded: (sheet) => flushedOf(sheet).length > 0,
  labels: (sheet, width) => flushedOf(sheet).map((stretch) => labelOf(stretch, width)),
  parts: (sheet, place): Part[] => [
    ...flushedOf(sheet).map((stretch) => ({
      name: 'flush-stretch',
      line: stretch.line,
      title: `Flush: ${stretch.text}`,
      shapes: bracket(stretch, place),
    })),
    ...place.labels.map((placed) => ({
      name: 'flush',
      line: placed.label.line,
      title: placed.label.title,
      shapes: labelText(placed, place.box.x + gutter),
    })),
  ],
};
