import { remembered } from '../../../grammar/remembered.ts';
import type { UsedWords } from './used-words.ts';

/** What a line says in words of its own, and what these are about. */
export interface Saying {
  readonly about: string;
  readonly text: string;
}

/* No line holds the end of one, so neither what it is about nor the words can. */
const parting = '\n';

/** A key to count a saying by, beside those of terms. */
export const keyOfSaying = ({ about, text }: Saying): string => `${about}${parting}${text}`;

/** The saying that is counted by a key; null for the key of a term. */
function sayingOf(key: string): Saying | null {
  const at = key.indexOf(parting);
  return at < 0 ? null : { about: key.slice(0, at), text: key.slice(at + parting.length) };
}

/** What logs say in words of their own, by what it is about, the commonest first. */
export const sayingsIn = remembered((used: UsedWords): ReadonlyMap<string, readonly string[]> => {
  const sayings = new Map<string, string[]>();
  for (const [key] of [...used].sort(([, a], [, b]) => b - a)) {
    const saying = sayingOf(key);
    if (saying === null) continue;
    const same = sayings.get(saying.about);
    if (same === undefined) sayings.set(saying.about, [saying.text]);
    else same.push(saying.text);
  }
  return sayings;
});
