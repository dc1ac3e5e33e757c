import type { WellLog } from '../../model/log.ts';
import { isShown } from '../depth-scale.ts';
import { line, type Part, type Shape, stroked } from '../shapes.ts';
import { measureText } from '../words.ts';
import { part, type WellFrame, xAt, yAt } from './frame.ts';
import { holeAt } from './geometry.ts';

const tickApart = 1.5;

function groundStretch(from: number, to: number, y: number): Shape[] {
  const count = Math.max(0, Math.floor((to - from) / tickApart));
  const ticks = Array.from({ length: count }, (_, n) => {
    const x = from + (n + 0.8) * tickApart;
    return line(
      [
        [x, y],
        [x - 0.9, y + 1.1],
      ],
      stroked('ink', 0.14),
    );
  });
  return [
    line(
      [
        [from, y],
        [to, y],
      ],
      stroked('ink', 0.4),
    ),
    ...ticks,
  ];
}

/** The ground surface on both sides of the well. */
export function groundParts(frame: WellFrame, log: WellLog): Part[] {
  if (!isShown(frame.scale.window, 0)) return [];
  const y = yAt(frame, 0);
  const width = holeAt(frame.well, 0)?.diameter ?? frame.well.widest;
  const { box } = frame;
  const elevation = log.ground === null ? '' : `, ${measureText(log.ground.elevation)}`;
  return [
    part('ground', log.ground?.line ?? null, `Ground surface${elevation}`, [
      ...groundStretch(box.x + 0.6, xAt(frame, width, -1), y),
      ...groundStretch(xAt(frame, width, 1), box.x + box.width - 0.6, y),
    ]),
  ];
}
