import { parseText } from '../../grammar/index.ts';
import { buildLog } from '../../server/model/build.ts';
import type { PipeString, Test, WellLog } from '../../server/model/log.ts';

/** The log of a text. */
export const logOf = (...lines: string[]): WellLog => buildLog(parseText(lines.join('\n')));

const only = <T>(all: readonly T[]): T => {
  const [first] = all;
  if (first === undefined) throw new Error('there is none');
  return first;
};

/** The first string of a text. */
export const stringOf = (...lines: string[]): PipeString => only(logOf(...lines).strings);

/** The first test of a text. */
export const testOf = (...lines: string[]): Test => only(logOf(...lines).tests);

interface WithInterval {
  readonly interval: {
    readonly top: { value: number | null } | null;
    readonly bottom: { value: number | null } | null;
  } | null;
}

/** Tops and bottoms in metres; null where unknown. */
export const endsOf = (entries: readonly WithInterval[]): (number | null)[][] =>
  entries.map(({ interval }) => [interval?.top?.value ?? null, interval?.bottom?.value ?? null]);
