/** A log that nothing is wrong with. */
export const sound = [
  'well      KH-04',
  '',
  'hole',
  '  0    - 20     254   air rotary',
  '',
  'strata',
  '  0    - 20     sand',
  '',
].join('\n');

/** One error: the second line of strata begins above the base of the first. */
export const overlapping = 'strata\n  0 - 6 clay\n  4 - 9 sand\n';

/** No error, one warning: the strata have a gap. */
export const gapped = 'strata\n  0 - 6 clay\n  7 - 9 sand\n';
