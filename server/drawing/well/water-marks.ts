import type { WaterFound, WaterLevel, WellLog } from '../../model/log.ts';
import { isShown } from '../depth-scale.ts';
import { filled, line, outlined, type Part, polygon, type Shape, stroked } from '../shapes.ts';
import { depthWithUnit, intervalWithUnit, listed, measureText, momentText, wordsText } from '../words.ts';
import { bothSides, part, type Side, type WellFrame, xAt, yAt } from './frame.ts';
import { boreAt, extentOf, holeAt } from './geometry.ts';
import type { PumpingLevel } from './pumping-level.ts';

/** Rate of a water found, saying whether it is what that depth adds or everything so far. */
export function rateText({ rate, rateMeans }: WaterFound): string {
  if (rate === null) return 'rate ?';
  return rateMeans === 'total' ? `total ${measureText(rate)}` : measureText(rate);
}

/** Water found, in words: depth, kind, rate. */
export const foundTitle = (found: WaterFound, unit: string): string =>
  `Water found ${found.interval ? intervalWithUnit(found.interval, unit) : depthWithUnit(found.depth, unit)}: ${listed([wordsText(found.kinds), rateText(found)])}`;

/** The depth at which a water found is marked: its own, or the middle of its interval. */
export function foundDepth(found: WaterFound): number | null {
  const [top, bottom] = [found.interval?.top?.value, found.interval?.bottom?.value];
  return found.depth?.value ?? (top != null && bottom != null ? (top + bottom) / 2 : null);
}

/** The wall of the hole on a side, at a depth. */
export const holeWall = (frame: WellFrame, depth: number, side: Side): number =>
  xAt(frame, holeAt(frame.well, depth)?.diameter ?? frame.well.widest, side);

function arrow(frame: WellFrame, depth: number, side: Side): Shape[] {
  const [x, y] = [holeWall(frame, depth, side) + side * 0.3, yAt(frame, depth)];
  return [
    line(
      [
        [x + side * 5, y],
        [x + side * 1.6, y],
      ],
      stroked('water', 0.45),
    ),
    polygon(
      [
        [x, y],
        [x + side * 1.9, y - 0.9],
        [x + side * 1.9, y + 0.9],
      ],
      filled('water'),
    ),
  ];
}

function foundBracket(frame: WellFrame, found: WaterFound): Shape[] {
  const extent = extentOf(found.interval, frame.scale.window);
  if (extent === null) return [];
  const { top, bottom } = extent;
  return bothSides((side) => {
    const x = holeWall(frame, (top + bottom) / 2, side) + side * 5;
    return [
      line(
        [
          [x, yAt(frame, top)],
          [x, yAt(frame, bottom)],
        ],
        stroked('water', 0.45),
      ),
    ];
  });
}

/** Arrows into the hole where water was found. */
export const foundParts = (frame: WellFrame, log: WellLog): Part[] =>
  log.water.found.flatMap((found) => {
    const depth = foundDepth(found);
    const arrows =
      depth !== null && isShown(frame.scale.window, depth) ? bothSides((side) => arrow(frame, depth, side)) : [];
    const shapes = [...arrows, ...foundBracket(frame, found)];
    return shapes.length === 0 ? [] : [part('water', found.line, foundTitle(found, frame.unit), shapes)];
  });

const markReach = 1.5;

/** A triangle that stands on the level, and the level across the bore. */
function levelMark(frame: WellFrame, depth: number, open: boolean): Shape[] {
  const [x, y] = [frame.centre, yAt(frame, depth)];
  const reach = Math.max((boreAt(frame.well, depth) * frame.mmAcross) / 2 - 0.3, markReach);
  const look = open ? outlined('paper', 'water', 0.3) : filled('water');
  return [
    line(
      [
        [x - reach, y],
        [x + reach, y],
      ],
      stroked('water', 0.3, open ? [1, 0.6] : null),
    ),
    polygon(
      [
        [x, y],
        [x - markReach, y - 2.2],
        [x + markReach, y - 2.2],
      ],
      look,
    ),
    line(
      [
        [x - 1, y + 0.7],
        [x + 1, y + 0.7],
      ],
      stroked('water', 0.25),
    ),
    line(
      [
        [x - 0.5, y + 1.3],
        [x + 0.5, y + 1.3],
      ],
      stroked('water', 0.25),
    ),
  ];
}

/** A static level in words. */
export const levelTitle = (level: WaterLevel, unit: string): string =>
  listed([`Static level ${depthWithUnit(level.level, unit)}`, momentText(level.date)]);

/* Of a well that was measured for years the last levels are drawn. */
const mostLevels = 4;

/** The static levels that are shown. */
export const drawnLevels = ({ water }: WellLog): WaterLevel[] => water.levels.slice(-mostLevels);

/** The static levels, and the deepest pumping level of each test. */
export function levelParts(frame: WellFrame, log: WellLog, pumping: readonly PumpingLevel[]): Part[] {
  const { window } = frame.scale;
  const still = drawnLevels(log).filter(({ level }) => isShown(window, level?.value ?? Number.NaN));
  return [
    ...pumping
      .filter(({ depth }) => isShown(window, depth))
      .map(({ depth, line: at, title }) => part('level-pumping', at, title, levelMark(frame, depth, true))),
    ...still.map((level) =>
      part('level-static', level.line, levelTitle(level, frame.unit), levelMark(frame, level.level?.value ?? 0, false)),
    ),
  ];
}
