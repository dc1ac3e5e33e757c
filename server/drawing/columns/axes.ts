import { axisTicks, type Tick, tickDecimals } from '../depth-scale.ts';
import { type Box, line, type Pairs, type Shape, stroked } from '../shapes.ts';
import { rowHeight, textRow, types } from '../text.ts';
import { unitName } from '../words.ts';
import type { Column } from './column.ts';

const minor = stroked('ink', 0.12);
const major = stroked('ink', 0.25);

/** The lesser marks as one comb along the edge of the column. */
function combShape(box: Box, ticks: readonly Tick[]): Shape[] {
  const right = box.x + box.width;
  const teeth = ticks
    .filter((tick) => !tick.major)
    .flatMap(
      ({ y }): Pairs => [
        [right, y],
        [right - 1, y],
        [right, y],
      ],
    );
  return teeth.length === 0 ? [] : [line(teeth, minor)];
}

function majorShapes(box: Box, ticks: readonly Tick[], decimals: number): Shape[] {
  const right = box.x + box.width;
  const height = rowHeight(types.number);
  return ticks
    .filter((tick) => tick.major)
    .flatMap(({ value, y }) => {
      const mark = line(
        [
          [right - 2, y],
          [right, y],
        ],
        major,
      );
      const top = Math.min(Math.max(y - height / 2, box.y), box.y + box.height - height);
      const text = value.toFixed(decimals).replace(/^-(0(\.0*)?)$/, '$1');
      return [mark, textRow(text, right - 2.6, top, types.number, 'end')];
    });
}

const tickShapes = (box: Box, ticks: readonly Tick[], decimals: number): Shape[] => [
  ...combShape(box, ticks),
  ...majorShapes(box, ticks, decimals),
];

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
