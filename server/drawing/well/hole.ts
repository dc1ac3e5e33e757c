import type { WellLog } from '../../model/log.ts';
import { filled, line, type Part, rect, type Shape, stroked } from '../shapes.ts';
import { intervalWithUnit, listed, measureText, wordsText } from '../words.ts';
import { bothSides, part, type WellFrame, xAt, yAt } from './frame.ts';
import type { HoleStretch } from './geometry.ts';

const wall = stroked('ink', 0.25);
const unknownWall = stroked('doubt', 0.25, [1.2, 0.8]);

const styleOf = (stretch: HoleStretch) => (stretch.known ? wall : unknownWall);

function stretchShapes(frame: WellFrame, stretch: HoleStretch, below: HoleStretch | undefined): Shape[] {
  const [top, bottom] = [yAt(frame, stretch.top), yAt(frame, stretch.bottom)];
  const [left, right] = [xAt(frame, stretch.diameter, -1), xAt(frame, stretch.diameter, 1)];
  const ledge = below && below.top === stretch.bottom ? below.diameter : stretch.continues ? stretch.diameter : 0;
  return [
    rect(left, top, right - left, bottom - top, filled('paper')),
    ...bothSides((side) => [
      line(
        [
          [xAt(frame, stretch.diameter, side), top],
          [xAt(frame, stretch.diameter, side), bottom],
        ],
        styleOf(stretch),
      ),
      line(
        [
          [xAt(frame, stretch.diameter, side), bottom],
          [xAt(frame, ledge, side), bottom],
        ],
        styleOf(stretch),
      ),
    ]),
  ];
}

/** What the notes say of the hole on that line. */
export function holeTitle(log: WellLog, lineNumber: number): string {
  const unit = log.units.depth;
  const entry = log.hole.find((each) => each.line === lineNumber);
  const old = log.existing.find((each) => each.line === lineNumber);
  if (entry)
    return listed([
      `Hole ${intervalWithUnit(entry.interval, unit)}`,
      measureText(entry.diameter) || 'diameter ?',
      wordsText(entry.methods),
    ]);
  return listed([
    `Old hole ${intervalWithUnit(old?.interval ?? null, unit)}`,
    measureText(old?.diameter ?? null) || 'diameter ?',
  ]);
}

/** The hole, each stretch as wide as it was bored. */
export const holeParts = (frame: WellFrame, log: WellLog): Part[] =>
  frame.well.hole.map((stretch, n) =>
    part('hole', stretch.line, holeTitle(log, stretch.line), stretchShapes(frame, stretch, frame.well.hole[n + 1])),
  );
