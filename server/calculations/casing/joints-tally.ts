import type { Formula } from '../formula.ts';

export const about: Formula = {
  name: 'joints tally',
  text: 'L = ∑ l; l length of each joint, m; the difference from the length of the string is shown',
  source: 'addition',
  range: null,
  caution: null,
};

export interface Tally {
  /** Length of all joints together, m. */
  readonly total: number;
  /** Total less the length of the string, m: positive where the joints are longer. */
  readonly difference: number;
  /** Places where two joints meet. */
  readonly connections: number;
}

/**
 * Adds up the joints of a string against its length, m, and counts the places where joints meet (welds or threads).
 *
 * Source: addition. Worked example: joints of 6.10 and 1.55 m for a string of 7.65 m: total 7.65, difference 0, one weld.
 */
export function jointsTally(joints: readonly number[], stringLength: number): Tally {
  const total = joints.reduce((sum, joint) => sum + joint, 0);
  return { total, difference: total - stringLength, connections: Math.max(0, joints.length - 1) };
}
