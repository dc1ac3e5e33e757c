import { line, type Part, rect, type Style, stroked } from '../shapes.ts';
import { depthWithUnit, listed, momentText } from '../words.ts';
import { bothSides, part, type WellFrame, xAt, yAt } from './frame.ts';
import type { DrawnString } from './geometry.ts';
import { wallLeft, wallWidth } from './strings.ts';

type Cut = DrawnString['string']['cuts'][number];

export const cutStyle: Style = stroked('quiet-ink', 0.2, [0.7, 0.5]);

/** A cut of a string in words. */
export const cutTitle = ({ to, date }: Cut, unit: string): string =>
  listed([`Cut off at ${depthWithUnit(to, unit)}`, momentText(date)]);

/** What was cut off a string, dashed above its new top, and the cut across it. */
export function cutParts(frame: WellFrame, drawn: DrawnString): Part[] {
  const cut = drawn.string.cuts.at(-1);
  const before = drawn.string.interval.top?.value ?? null;
  if (cut === undefined || before === null || !(before < drawn.head && drawn.head === drawn.top)) return [];
  const [old, now] = [yAt(frame, Math.max(before, frame.scale.window.top)), yAt(frame, drawn.top)];
  const across = line(
    [
      [xAt(frame, drawn.outer, -1) - 0.8, now],
      [xAt(frame, drawn.outer, 1) + 0.8, now],
    ],
    stroked('ink', 0.25),
  );
  const gone = bothSides((side) => [
    rect(wallLeft(frame, drawn, side), old, wallWidth(frame, drawn), now - old, cutStyle),
  ]);
  return [part('cut', cut.line, cutTitle(cut, frame.unit), [...gone, across])];
}
