import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'water column',
  text: 'h = z - w; z depth, w water level, both in m below ground',
  source: 'subtraction',
  range: 'the level not below the depth',
  caution: null,
};

/**
 * Height of water that stands above a depth, m: depth less water level, both in m below ground (negative above it, as
 * in a flowing well). Refused where the level is below the depth: it is dry there.
 *
 * Source: subtraction. Worked example: bottom 61 m, level 5.2 m: 55.8 m.
 */
export function waterColumn(depth: number, level: number): Outcome {
  const height = depth - level;
  return height >= 0 ? known(height) : refused('the water level is below that depth');
}
