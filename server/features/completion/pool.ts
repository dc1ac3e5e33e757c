import { begins, type Suggestion } from './suggestion.ts';
import type { UsedWords } from './used-words.ts';

/** Suggestions that stand for the same place time and again, with what is looked up in them. */
export interface Pool {
  readonly all: readonly Suggestion[];
  /** Those of which a word begins with the letter, in lower case. */
  readonly byLetter: ReadonlyMap<string, readonly Suggestion[]>;
  /** Where in `all` a term stands, by the key that its use is counted under. */
  readonly places: ReadonlyMap<string, number>;
}

const keyOf = ({ about, label }: Suggestion): string => (about?.kind === 'term' ? `${about.list}/${label}` : '');

const lettersOf = ({ words }: Suggestion): ReadonlySet<string> =>
  new Set(words.split(' ').map((word) => word.charAt(0)));

function byLetterOf(all: readonly Suggestion[]): ReadonlyMap<string, readonly Suggestion[]> {
  const byLetter = new Map<string, Suggestion[]>();
  for (const suggestion of all)
    for (const letter of lettersOf(suggestion)) {
      const same = byLetter.get(letter);
      if (same === undefined) byLetter.set(letter, [suggestion]);
      else same.push(suggestion);
    }
  return byLetter;
}

/** A pool of suggestions, in the order in which they stand where none of them was used. */
export const poolOf = (all: readonly Suggestion[]): Pool => ({
  all,
  byLetter: byLetterOf(all),
  places: new Map(all.map((suggestion, at) => [keyOf(suggestion), at])),
});

/** A suggestion, how often it was used in this log and in those beside it, and where it stands. */
interface Ranked {
  readonly suggestion: Suggestion;
  readonly here: number;
  readonly beside: number;
  readonly place: number;
}

const byRank = (a: Ranked, b: Ranked): number => b.here - a.here || b.beside - a.beside || a.place - b.place;

/** Those that were used, of which a word begins with the letter. */
function usedOf({ all, places }: Pool, letter: string, here: UsedWords, beside: UsedWords): readonly Suggestion[] {
  const ranked: Ranked[] = [];
  const take = (key: string): void => {
    const place = key === '' ? undefined : places.get(key);
    const suggestion = place === undefined ? undefined : all[place];
    if (place === undefined || suggestion === undefined || !begins(suggestion, letter)) return;
    ranked.push({ suggestion, here: here.get(key) ?? 0, beside: beside.get(key) ?? 0, place });
  };
  for (const key of here.keys()) take(key);
  for (const key of beside.keys()) if (!here.has(key)) take(key);
  return ranked.sort(byRank).map(({ suggestion }) => suggestion);
}

/**
 * Those of a pool of which a word begins with the letter; all of it where the letter is empty. What this log used most
 * comes first, then what the logs beside it used, then the rest as it stood.
 */
export function usedFirst(pool: Pool, letter: string, here: UsedWords, beside: UsedWords): readonly Suggestion[] {
  const wanted = letter === '' ? pool.all : (pool.byLetter.get(letter) ?? []);
  const used = usedOf(pool, letter, here, beside);
  if (used.length === 0) return wanted;
  const known = new Set(used);
  return [...used, ...wanted.filter((suggestion) => !known.has(suggestion))];
}
