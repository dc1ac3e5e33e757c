import type { Formula } from '../formula.ts';

export const about: Formula = {
  name: 'joints tally',
  text: 'L = ∑ n l; n joints of length l, m; L less the length of the string is the difference; joints meet in ∑ n - 1 places',
  source: 'addition',
  range: null,
  caution: null,
};

/** Joints of one length: how many, and the length of one, m. */
export interface Joints {
  readonly count: number;
  readonly length: number;
}

export interface Tally {
  /** Length of all joints together, m. */
  readonly total: number;
  /** Places where two joints meet. */
  readonly connections: number;
}

/**
 * Adds up the joints of a string, m, and counts the places where joints meet (welds or threads).
 *
 * Source: addition. Worked example: joints of 6.10 and 1.55 m: total 7.65, one weld; 3 of 6.10 and one of 1.55: 19.85, three.
 */
export function jointsTally(joints: readonly Joints[]): Tally {
  return {
    total: joints.reduce((sum, { count, length }) => sum + count * length, 0),
    connections: Math.max(0, joints.reduce((sum, { count }) => sum + count, 0) - 1),
  };
}
