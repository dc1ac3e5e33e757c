import type { Line } from '../../../grammar/tree.ts';
import { wordsOf } from '../words.ts';
import { headKeysOf } from './head-values.ts';
import type { Suggestion } from './suggestion.ts';

/** How often terms stand in logs, by their list and name, and values of the head, by their row. */
export type UsedWords = ReadonlyMap<string, number>;

const keysOfLine = new WeakMap<Line, readonly string[]>();

function keysOf(line: Line): readonly string[] {
  const known = keysOfLine.get(line);
  if (known !== undefined) return known;
  const keys = [...wordsOf(line).map(({ list, term }) => `${list}/${term.name}`), ...headKeysOf(line)];
  keysOfLine.set(line, keys);
  return keys;
}

/** How often each term stands in lines of a log. */
export function usedWords(lines: readonly Line[]): UsedWords {
  const counts = new Map<string, number>();
  for (const line of lines) for (const key of keysOf(line)) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

/** The counts of several logs together. */
export function allWords(logs: readonly UsedWords[]): UsedWords {
  const counts = new Map<string, number>();
  for (const log of logs) for (const [key, count] of log) counts.set(key, (counts.get(key) ?? 0) + count);
  return counts;
}

const keys = new WeakMap<Suggestion, string>();

/** Worked out once for each term: all of them are ranked at every list. */
function keyOf(suggestion: Suggestion): string {
  const known = keys.get(suggestion);
  if (known !== undefined) return known;
  const { about, label } = suggestion;
  const key = about?.kind === 'term' ? `${about.list}/${label}` : '';
  keys.set(suggestion, key);
  return key;
}

/** What this log used most comes first, then what the logs beside it used, then the rest as it stood. */
export function usedFirst(
  suggestions: readonly Suggestion[],
  here: UsedWords,
  beside: UsedWords,
): readonly Suggestion[] {
  const rank = (suggestion: Suggestion): readonly [number, number] => {
    const key = keyOf(suggestion);
    return [here.get(key) ?? 0, beside.get(key) ?? 0];
  };
  const known: Suggestion[] = [];
  const rest: Suggestion[] = [];
  for (const suggestion of suggestions) {
    const key = keyOf(suggestion);
    (here.has(key) || beside.has(key) ? known : rest).push(suggestion);
  }
  const used = known
    .map((suggestion) => ({ suggestion, rank: rank(suggestion) }))
    .sort((a, b) => b.rank[0] - a.rank[0] || b.rank[1] - a.rank[1])
    .map(({ suggestion }) => suggestion);
  return [...used, ...rest];
}
