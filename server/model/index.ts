export { buildLog } from './build.ts';
export { innermost, order, topOf, topOfCasing, type When } from './casing-top.ts';
export { blankLog } from './draft.ts';
export { belowDatum } from './settle.ts';
export { defaultUnits } from './units.ts';
