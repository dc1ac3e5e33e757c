import type { Suggestion } from './suggestion.ts';
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

const lettersOf = ({ filter }: Suggestion): ReadonlySet<string> =>
  new Set(
    filter
      .toLowerCase()
      .split(' ')
      .map((word) => word.charAt(0)),
  );

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

/** How often a suggestion was used in this log and in those beside it, and where it stands. */
type Rank = readonly [here: number, beside: number, place: number];

const byRank = ([hereA, besideA, a]: Rank, [hereB, besideB, b]: Rank): number =>
  hereB - hereA || besideB - besideA || a - b;

function ranksOf({ places }: Pool, here: UsedWords, beside: UsedWords): readonly Rank[] {
  const ranks = new Map<number, Rank>();
  for (const key of [...here.keys(), ...beside.keys()]) {
    const place = key === '' ? undefined : places.get(key);
    if (place !== undefined) ranks.set(place, [here.get(key) ?? 0, beside.get(key) ?? 0, place]);
  }
  return [...ranks.values()].sort(byRank);
}

/**
 * Those of a pool of which a word begins with the letter; all of it where the letter is empty. What this log used most
 * comes first, then what the logs beside it used, then the rest as it stood.
 */
export function usedFirst(pool: Pool, letter: string, here: UsedWords, beside: UsedWords): readonly Suggestion[] {
  const wanted = letter === '' ? pool.all : (pool.byLetter.get(letter) ?? []);
  const ranked = ranksOf(pool, here, beside).flatMap(([, , place]) => pool.all[place] ?? []);
  const used = letter === '' ? ranked : ranked.filter((suggestion) => wanted.includes(suggestion));
  if (used.length === 0) return wanted;
  const known = new Set(used);
  return [...used, ...wanted.filter((suggestion) => !known.has(suggestion))];
}
