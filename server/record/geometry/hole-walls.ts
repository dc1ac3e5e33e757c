import type { Measure, WellLog } from '../../model/log.ts';
import { inDoubt, intervalInDoubt, type Stretch, stretchOf } from '../intervals.ts';
import { type Layer, layered } from './layers.ts';

/** The hole as one line of the log has it. `diameter` in metres, null where it was not written down. */
export interface HoleWall {
  readonly diameter: number | null;
  readonly line: number;
  readonly measure: Measure | null;
  readonly doubtful: boolean;
}

type Logged = Layer<HoleWall>;

/** The hole from the top down: at each depth the widest of the diameters logged there, a missing one first. */
export function holeWalls(log: WellLog): Logged[] {
  const logged = [...log.hole, ...log.existing].flatMap((entry): Logged[] => {
    const stretch = stretchOf(entry.interval);
    if (!stretch) return [];
    const doubtful = inDoubt(entry.diameter) || intervalInDoubt(entry.interval);
    const wall = { diameter: entry.diameter?.value ?? null, line: entry.line, measure: entry.diameter, doubtful };
    return [{ ...stretch, of: wall }];
  });
  return layered(logged.sort((a, b) => width(b) - width(a)));
}

const width = (layer: Logged): number => layer.of.diameter ?? Number.POSITIVE_INFINITY;

/**
 * The wide hole below the foot of a string: from the foot down to where the hole gets narrower than the string. It was
 * open when the string was set, since no bit passes through a string and cuts wider. Null where no narrower hole follows.
 */
export function wideHoleBelow(walls: readonly Logged[], foot: number, outside: number): Stretch | null {
  let bottom = foot;
  for (const wall of walls) {
    if (wall.bottom <= foot) continue;
    if (wall.top > bottom || wall.of.diameter === null) return null;
    if (wall.of.diameter < outside) return bottom > foot ? { top: foot, bottom } : null;
    bottom = wall.bottom;
  }
  return null;
}
