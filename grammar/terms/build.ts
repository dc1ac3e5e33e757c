import type { GroundClass, GroundFacts, ListId, Term, TermList } from './term.ts';

const idOf = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

const forms = (short: string): readonly string[] => (short === '' ? [] : short.split('|'));

export const common = 'common practice, no source';

/** Terms of one source. `short` holds the short forms, parted by `|`. */
export const from =
  (source: string) =>
  (name: string, short: string, meaning: string, more: Partial<Term> = {}): Term => ({
    id: idOf(name),
    name,
    short: forms(short),
    meaning,
    source,
    ...more,
  });

/** Materials of one family. `adjective` holds the adjective and then its short forms, parted by `|`. */
export const ground =
  (groundClass: GroundClass, rock: boolean, source: string) =>
  (name: string, short: string, fgdc: number | null, adjective: string, meaning: string): Term => {
    const [long, ...rest] = forms(adjective);
    const base: GroundFacts = { class: groundClass, rock, fgdc };
    const facts = long === undefined ? base : { ...base, adjective: long, adjectiveShort: rest };
    return { id: idOf(name), name, short: forms(short), meaning, source, ground: facts };
  };

export const list = (id: ListId, title: string, terms: readonly Term[]): TermList => ({ id, title, terms });
