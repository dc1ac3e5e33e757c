import type { Pump, WellLog } from '../../model/log.ts';
import { isShown } from '../depth-scale.ts';
import { line, outlined, type Part, rect, type Shape, stroked } from '../shapes.ts';
import { depthWithUnit, listed, measureText, wordsText } from '../words.ts';
import { part, type WellFrame, yAt } from './frame.ts';

const bodyWidth = 1.4;
const bodyHeight = 2.6;

const pipe = (x: number, top: number, foot: number): Shape =>
  line(
    [
      [x, top],
      [x, foot],
    ],
    stroked('ink', 0.25),
  );

/** A pump whose foot is at `foot`, on its pipe from `top` where that is above it. */
export const pumpShapes = (x: number, top: number, foot: number): Shape[] => [
  ...(top < foot - bodyHeight ? [pipe(x, top, foot - bodyHeight)] : []),
  rect(x - bodyWidth / 2, foot - bodyHeight, bodyWidth, bodyHeight, outlined('paper', 'ink', 0.25)),
];

/** A pump in words: where it is set, kind, power, rate. */
export const pumpTitle = (pump: Pump, unit: string): string =>
  listed([
    `Pump set at ${depthWithUnit(pump.set, unit)}`,
    wordsText(pump.kinds),
    measureText(pump.power),
    measureText(pump.rate),
  ]);

/** The pump as last set, on its pipe from the top of the well; of one deeper than what is shown the pipe alone. */
export function pumpParts(frame: WellFrame, log: WellLog): Part[] {
  const { window } = frame.scale;
  const pump = log.pumps.findLast(({ set }) => set?.value != null && Number.isFinite(set.value));
  const set = pump?.set?.value ?? Number.NaN;
  if (pump === undefined || !(set > Math.max(window.top, 0))) return [];
  const head = frame.well.strings.reduce((least, each) => Math.min(least, each.top), window.bottom);
  const top = yAt(frame, head);
  const shapes = isShown(window, set)
    ? pumpShapes(frame.centre, top, yAt(frame, set))
    : [pipe(frame.centre, top, yAt(frame, window.bottom))];
  return [part('pump', pump.line, pumpTitle(pump, frame.unit), shapes)];
}
