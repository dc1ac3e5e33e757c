import type { Suggestion } from './suggestion.ts';
import { numberOf, type TermCounts } from './used-words.ts';

/** Suggestions that stand for the same place time and again, with what is looked up in them. */
export interface Pool {
  readonly all: readonly Suggestion[];
  /** Where in `all` those stand of which a word begins with the letter, in lower case. */
  readonly byLetter: ReadonlyMap<string, readonly number[]>;
  readonly everywhere: readonly number[];
  /** The number of the term at each place of `all`; -1 for what is none. */
  readonly terms: Int32Array;
  /** 1 where a suggestion of several words stands in `all`, else 0. */
  readonly severalWords: Uint8Array;
}

const lettersOf = ({ words }: Suggestion): ReadonlySet<string> =>
  new Set(words.split(' ').map((word) => word.charAt(0)));

function byLetterOf(all: readonly Suggestion[]): ReadonlyMap<string, readonly number[]> {
  const byLetter = new Map<string, number[]>();
  for (const [place, suggestion] of all.entries())
    for (const letter of lettersOf(suggestion)) {
      const same = byLetter.get(letter);
      if (same === undefined) byLetter.set(letter, [place]);
      else same.push(place);
    }
  return byLetter;
}

const none = -1;

const termOf = ({ about, label }: Suggestion): number =>
  about?.kind === 'term' ? (numberOf(about.list, label) ?? none) : none;

/** A pool of suggestions, in the order in which they stand where none of them was used. */
export const poolOf = (all: readonly Suggestion[]): Pool => ({
  all,
  byLetter: byLetterOf(all),
  everywhere: [...all.keys()],
  terms: Int32Array.from(all, termOf),
  severalWords: Uint8Array.from(all, ({ label }) => (label.includes(' ') ? 1 : 0)),
});

/** Where a suggestion stands, and how often it was used in this log and in those beside it. */
type Used = readonly [place: number, here: number, beside: number];

const byUse = ([a, hereA, besideA]: Used, [b, hereB, besideB]: Used): number =>
  hereB - hereA || besideB - besideA || a - b;

function usedOf({ terms }: Pool, here: TermCounts, beside: TermCounts): readonly Used[] {
  const used: Used[] = [];
  for (let place = 0; place < terms.length; place += 1) {
    const number = terms[place] ?? none;
    const [inLog, inOthers] = number === none ? [0, 0] : [here[number] ?? 0, beside[number] ?? 0];
    if (inLog > 0 || inOthers > 0) used.push([place, inLog, inOthers]);
  }
  return used.sort(byUse);
}

const wanted = 1;
const taken = 2;

/** The places of a pool that are wanted, those that were used before the others. */
function inOrder(pool: Pool, places: readonly number[], used: readonly Used[]): readonly number[] {
  const marks = new Uint8Array(pool.all.length);
  for (const place of places) marks[place] = wanted;
  const order: number[] = [];
  for (const [place] of used) {
    if (marks[place] !== wanted) continue;
    order.push(place);
    marks[place] = taken;
  }
  for (const place of places) if (marks[place] === wanted) order.push(place);
  return order;
}

/**
 * Where in a pool those stand of which a word begins with the letter; all of it where the letter is empty. What this log
 * used most comes first, then what the logs beside it used, then the rest as it stood.
 */
export const usedFirst = (pool: Pool, letter: string, here: TermCounts, beside: TermCounts): readonly number[] =>
  inOrder(pool, letter === '' ? pool.everywhere : (pool.byLetter.get(letter) ?? []), usedOf(pool, here, beside));
