import type { AtDepth, Drilling, WellLog } from '../../model/log.ts';
import { isShown, shown } from '../depth-scale.ts';
import { ellipse, line, outlined, type Part, type Shape, stroked } from '../shapes.ts';
import { depthWithUnit, intervalWithUnit, listed, termText } from '../words.ts';
import { fittingTitle } from './fittings.ts';
import { part, type WellFrame, xAt, yAt } from './frame.ts';
import { extentOf, holeAt } from './geometry.ts';

type Lost = Drilling['lost'][number];

/** Lost returns in words. */
export const lostTitle = (lost: Lost, unit: string): string =>
  listed([
    `Returns lost ${lost.interval ? intervalWithUnit(lost.interval, unit) : depthWithUnit(lost.depth, unit)}`,
    termText(lost.extent),
  ]);

/** Where returns were lost, in metres: the middle of the stretch, or its depth. */
export function lostDepth({ interval, depth }: Lost): number | null {
  const [top, bottom] = [interval?.top?.value, interval?.bottom?.value];
  return depth?.value ?? (top != null && bottom != null ? (top + bottom) / 2 : null);
}

function lostShapes(frame: WellFrame, lost: Lost): Shape[] {
  const { window } = frame.scale;
  const middle = lostDepth(lost);
  if (middle === null || !isShown(window, middle)) return [];
  const extent = extentOf(lost.interval, window) ?? { top: middle, bottom: middle };
  const x = xAt(frame, holeAt(frame.well, middle)?.diameter ?? frame.well.widest, -1);
  const [top, bottom] = [yAt(frame, extent.top), yAt(frame, extent.bottom)];
  return [
    line(
      [
        [x - 0.6, top],
        [x - 2.6, top],
        [x - 2.6, bottom],
        [x - 0.6, bottom],
      ],
      stroked('doubt', 0.3),
    ),
    line(
      [
        [x - 2.6, yAt(frame, middle)],
        [x - 4.6, yAt(frame, middle)],
      ],
      stroked('doubt', 0.3, [0.7, 0.5]),
    ),
  ];
}

/** Brackets beside the hole where the returns were lost. */
export const lostParts = (frame: WellFrame, log: WellLog): Part[] =>
  log.drilling.flatMap((drilling) =>
    drilling.lost.flatMap((lost) => {
      const shapes = lostShapes(frame, lost);
      return shapes.length === 0 ? [] : [part('lost', lost.line, lostTitle(lost, frame.unit), shapes)];
    }),
  );

function gasShapes(frame: WellFrame, { depth }: AtDepth): Shape[] {
  if (depth?.value == null || !isShown(frame.scale.window, depth.value)) return [];
  const x = xAt(frame, holeAt(frame.well, depth.value)?.diameter ?? frame.well.widest, 1);
  const y = yAt(frame, shown(frame.scale.window, depth.value));
  return [
    ellipse(x + 1.3, y, 0.7, 0.7, outlined('paper', 'doubt', 0.3)),
    ellipse(x + 2.8, y - 0.7, 0.4, 0.4, outlined('paper', 'doubt', 0.25)),
  ];
}

/** Bubbles beside the hole where gas was met. */
export const gasParts = (frame: WellFrame, log: WellLog): Part[] =>
  log.water.gas.flatMap((gas) => {
    const shapes = gasShapes(frame, gas);
    return shapes.length === 0 ? [] : [part('gas', gas.line, fittingTitle('Gas', gas, frame.unit), shapes)];
  });
