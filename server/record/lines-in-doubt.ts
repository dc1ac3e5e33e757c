import { remembered } from '../../grammar/remembered.ts';
import type { WellLog } from '../model/log.ts';

/** Lines that hold a value written as about or in doubt, for values that the log keeps as bare numbers. */
export const linesInDoubt = remembered(
  ({ questions }: WellLog): ReadonlySet<number> =>
    new Set(questions.filter(({ kind }) => kind !== 'unknown').map(({ span }) => span.line)),
);
