import type { Formula } from '../formula.ts';

export const about: Formula = {
  name: 'water level by datum',
  text: 'bgs = toc - s; E = G - bgs; bgs depth below ground, toc depth below the top of the casing, s height of that top above ground, G elevation of the ground, E of the water, m',
  source: 'subtraction',
  range: null,
  caution: 'A casing that is cut or raised shifts every level from its top: take the height as it stood on that day.',
};

/** Depth below the top of the casing, m, of a level below ground. 5.20 bgs, 0.45: 5.65. */
export function belowTop(depthBelowGround: number, stickUp: number): number {
  return depthBelowGround + stickUp;
}

/** Elevation, m, of a depth below ground. Ground 287.4, 5.2 below: 282.2. */
export function elevationOf(ground: number, depthBelowGround: number): number {
  return ground - depthBelowGround;
}
