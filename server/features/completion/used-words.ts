import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import { remembered } from '../../../grammar/remembered.ts';
import type { Line, Tree } from '../../../grammar/tree.ts';
import { wordsOf } from '../words.ts';
import { headKeysOf } from './head-values.ts';

/** How often terms stand in logs, by their list and name, and values of the head, by their row. */
export type UsedWords = ReadonlyMap<string, number>;

const keysOf = rememberedOfLine((line: Line): readonly string[] => [
  ...wordsOf(line).map(({ list, term }) => `${list}/${term.name}`),
  ...headKeysOf(line),
]);

/** How often each term stands in lines of a log. */
export function usedWords(lines: readonly Line[]): UsedWords {
  const counts = new Map<string, number>();
  for (const line of lines) for (const key of keysOf(line)) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

/** How often each term stands in a whole log. */
export const wordsOfLog = remembered(({ lines }: Tree): UsedWords => usedWords(lines));

/** The counts of several logs together. */
export function allWords(logs: readonly UsedWords[]): UsedWords {
  const counts = new Map<string, number>();
  for (const log of logs) for (const [key, count] of log) counts.set(key, (counts.get(key) ?? 0) + count);
  return counts;
}
