import type { WellLog } from '../model/log.ts';

const found = new WeakMap<WellLog, ReadonlySet<number>>();

/** Lines that hold a value written as about or in doubt, for values that the log keeps as bare numbers. */
export function linesInDoubt(log: WellLog): ReadonlySet<number> {
  const known = found.get(log);
  if (known) return known;
  const lines = new Set(log.questions.filter(({ kind }) => kind !== 'unknown').map(({ span }) => span.line));
  found.set(log, lines);
  return lines;
}
