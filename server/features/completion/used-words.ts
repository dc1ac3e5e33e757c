import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import { remembered } from '../../../grammar/remembered.ts';
import { termLists } from '../../../grammar/terms/index.ts';
import type { ListId } from '../../../grammar/terms/term.ts';
import type { Line, Tree } from '../../../grammar/tree.ts';
import { wordsOf } from '../words.ts';
import { headSayings } from './head-values.ts';
import { sayingsOn } from './said-again.ts';
import { keyOfSaying } from './sayings.ts';

/** How often terms stand in logs, by their list and name, and what lines say in words of their own, by the key of the saying. */
export type UsedWords = ReadonlyMap<string, number>;

const keyOf = (list: ListId, name: string): string => `${list}/${name}`;

const keysOf = rememberedOfLine((line: Line): readonly string[] => [
  ...wordsOf(line).map(({ list, term }) => keyOf(list, term.name)),
  ...[...headSayings(line), ...sayingsOn(line)].map(keyOfSaying),
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

const numbers: ReadonlyMap<string, number> = new Map(
  termLists.flatMap(({ id, terms }) => terms.map(({ name }) => keyOf(id, name))).map((key, number) => [key, number]),
);

/** The number of a term, by which it is counted. */
export const numberOf = (list: ListId, name: string): number | null => numbers.get(keyOf(list, name)) ?? null;

/** How often each term was used, by its number. */
export type TermCounts = Uint32Array;

const numbersOf = rememberedOfLine((line: Line): readonly number[] =>
  wordsOf(line).flatMap(({ list, term }) => numberOf(list, term.name) ?? []),
);

/** How often each term stands in lines of a log. */
export function countTerms(lines: readonly Line[]): TermCounts {
  const counts = new Uint32Array(numbers.size);
  for (const line of lines) for (const number of numbersOf(line)) counts[number] = (counts[number] ?? 0) + 1;
  return counts;
}

/** The counts of terms alone, by their numbers. */
export const countsOf = remembered((used: UsedWords): TermCounts => {
  const counts = new Uint32Array(numbers.size);
  for (const [key, count] of used) {
    const number = numbers.get(key);
    if (number !== undefined) counts[number] = count;
  }
  return counts;
});
