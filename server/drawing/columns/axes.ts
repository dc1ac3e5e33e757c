import { axisTicks, type Tick, tickDecimals } from '../depth-scale.ts';
import { type Box, line, type Shape, stroked } from '../shapes.ts';
import { rowHeight, textRow, types } from '../text.ts';
import { unitName } from '../words.ts';
import type { Column } from './column.ts';

const minor = stroked('ink', 0.12);
const major = stroked('ink', 0.25);

function tickShapes(box: Box, ticks: readonly Tick[], decimals: number): Shape[] {
  const right = box.x + box.width;
  return ticks.flatMap(({ value, y, major: isMajor }) => {
    const mark = line(
      [
        [right - (isMajor ? 2 : 1), y],
        [right, y],
      ],
      isMajor ? major : minor,
    );
    const height = rowHeight(types.number);
    if (!isMajor) return [mark];
    const top = Math.min(Math.max(y - height / 2, box.y), box.y + box.height - height);
    return [
      mark,
      textRow(value.toFixed(decimals).replace(/^-(0(\.0*)?)$/, '$1'), right - 2.6, top, types.number, 'end'),
    ];
  });
}

/** Depth below ground, in the file's unit. */
export const depthColumn: Column = {
  id: 'depth',
  heading: () => 'Depth',
  subheading: ({ unit }) => unitName(unit),
  width: 11,
  grows: false,
  rise: 0,
  isNeeded: () => true,
  labels: () => [],
  parts: ({ unit }, { scale, box }) => {
    const ticks = axisTicks(scale, unit, 1, 0);
    return [
      {
        name: 'axis-depth',
        line: null,
        title: `Depth below ground in ${unitName(unit)}`,
        shapes: tickShapes(box, ticks, tickDecimals(ticks)),
      },
    ];
  },
};

/* Higher and lower than any ground: a slip. */
const highestGround = 10_000;

/** Elevation, where that of the ground is known, in the file's unit. */
export const elevationColumn: Column = {
  id: 'elevation',
  heading: () => 'Elevation',
  subheading: ({ unit, log }) => `${unitName(unit)}${log.ground?.elevation?.doubtful ? ', doubtful' : ''}`,
  width: 13.5,
  grows: false,
  rise: 0,
  isNeeded: ({ log }) => Math.abs(log.ground?.elevation?.value ?? Number.NaN) <= highestGround,
  labels: () => [],
  parts: ({ unit, log }, { scale, box }) => {
    const ticks = axisTicks(scale, unit, -1, log.ground?.elevation?.value ?? 0);
    const title = `Elevation in ${unitName(unit)}`;
    return [
      {
        name: 'axis-elevation',
        line: log.ground?.line ?? null,
        title,
        shapes: tickShapes(box, ticks, tickDecimals(ticks)),
      },
    ];
  },
};
