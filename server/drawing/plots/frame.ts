import { type Box, line, type Part, type Shape, stroked } from '../shapes.ts';
import { fitted, rowHeight, textRow, types } from '../text.ts';
import type { Axis } from './axes.ts';

const grid = stroked('rule', 0.12);
const edge = stroked('ink', 0.3);
const mark = stroked('ink', 0.25);

function acrossShapes({ ticks, title }: Axis, box: Box): Shape[] {
  const foot = box.y + box.height;
  return [
    ...ticks.flatMap(({ at, text }) => [
      line(
        [
          [at, box.y],
          [at, foot],
        ],
        grid,
      ),
      line(
        [
          [at, foot],
          [at, foot + (text === '' ? 0.8 : 1.4)],
        ],
        mark,
      ),
      ...(text === '' ? [] : [textRow(text, at, foot + 1.8, types.number, 'middle')]),
    ]),
    textRow(
      fitted(title, types.body, box.width),
      box.x + box.width / 2,
      foot + 2 + rowHeight(types.number) + 0.8,
      types.body,
      'middle',
    ),
  ];
}

function downShapes({ ticks, title }: Axis, box: Box): Shape[] {
  return [
    ...ticks.flatMap(({ at, text }) => [
      line(
        [
          [box.x, at],
          [box.x + box.width, at],
        ],
        grid,
      ),
      line(
        [
          [box.x - 1.4, at],
          [box.x, at],
        ],
        mark,
      ),
      textRow(text, box.x - 2, at - rowHeight(types.number) / 2, types.number, 'end'),
    ]),
    textRow(fitted(title, types.body, box.width), box.x - 15, box.y - rowHeight(types.body) - 1.4, types.body),
  ];
}

/** The axes of a plot with their marks and titles, and its edge. */
export const plotFrame = (across: Axis, down: Axis, box: Box): Part => ({
  name: 'plot-frame',
  line: null,
  title: `${across.title} across, ${down.title} down`,
  shapes: [
    ...acrossShapes(across, box),
    ...downShapes(down, box),
    line(
      [
        [box.x, box.y],
        [box.x + box.width, box.y],
        [box.x + box.width, box.y + box.height],
        [box.x, box.y + box.height],
        [box.x, box.y],
      ],
      edge,
    ),
  ],
});
