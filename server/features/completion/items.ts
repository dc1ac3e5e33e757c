import * as l10n from '@vscode/l10n';
import type { Slot } from '../../../grammar/table.ts';
import type { ListId, Term } from '../../../grammar/terms/term.ts';
import { listTitle, termsOf } from '../words.ts';
import { type CompletionPlace, linesAround } from './place.ts';
import { type Pool, poolOf, usedFirst } from './pool.ts';
import { depthsWritten, listsOf, openSlots, touchesNumber } from './slots.ts';
import { beginningAt, plain, type Suggestion, type SuggestionSource } from './suggestion.ts';
import { countsOf, countTerms } from './used-words.ts';

const suggestionOf = (list: ListId, term: Term): Suggestion =>
  plain('term', term.name, listTitle(list).toLowerCase(), {
    filter: [term.name, ...term.short].join(' '),
    about: { kind: 'term', list, id: term.id },
  });

const adjectiveOf = (list: ListId, term: Term): readonly Suggestion[] => {
  const adjective = term.ground?.adjective;
  if (adjective === undefined) return [];
  const filter = [adjective, ...(term.ground?.adjectiveShort ?? [])].join(' ');
  return [
    plain('term', adjective, l10n.t('with {0}', term.name), { filter, about: { kind: 'term', list, id: term.id } }),
  ];
};

const made = new Map<ListId, readonly Suggestion[]>();

export function suggestionsOf(list: ListId): readonly Suggestion[] {
  const known = made.get(list);
  if (known !== undefined) return known;
  const terms = termsOf(list);
  const all = [...terms.map((term) => suggestionOf(list, term)), ...terms.flatMap((term) => adjectiveOf(list, term))];
  made.set(list, all);
  return all;
}

const labelsOf = (slot: Slot): readonly Suggestion[] => {
  const label = slot.labels[0];
  const isFlag = slot.accepts.every(({ kind }) => kind === 'flag');
  if (label === undefined) return [];
  return [
    plain('label', label, l10n.t(slot.doc), { insert: isFlag ? label : `${label} `, filter: slot.labels.join(' ') }),
  ];
};

/** Terms and labels of several slots; a list that several of them take counts once. */
function suggestionsOfSlots(slots: readonly Slot[]): readonly Suggestion[] {
  const seen = new Set<ListId>();
  return slots.flatMap((slot) => {
    const lists = [...listsOf(slot), ...(slot.labelList === null ? [] : [slot.labelList])];
    const fresh = [...new Set(lists)].filter((list) => !seen.has(list));
    for (const list of fresh) seen.add(list);
    return [...fresh.flatMap(suggestionsOf), ...(slot.labelList === null ? labelsOf(slot) : [])];
  });
}

const pools = new Map<string, Pool>();

/** The pool of those slots; the slots that a row's lines may lack are few sets, met again and again. */
function poolOfSlots(row: string, slots: readonly Slot[]): Pool {
  const key = `${row}: ${slots.map(({ slot }) => slot).join()}`;
  let pool = pools.get(key);
  if (pool === undefined) {
    pool = poolOf(suggestionsOfSlots(slots));
    pools.set(key, pool);
  }
  return pool;
}

/** The words right before the cursor, longest run first, each with where it begins. */
function runsBefore({ before }: CompletionPlace): readonly (readonly [string, number])[] {
  const phrase = /[^,;#\d]*$/.exec(before)?.[0] ?? '';
  const starts = [...phrase.matchAll(/\S+/g)]
    .map((word) => word.index)
    .slice(0, -1)
    .slice(-3);
  return starts.map((start) => [phrase.slice(start).toLowerCase(), before.length - phrase.length + start] as const);
}

type Run = ReturnType<typeof runsBefore>[number];

/** A term of several words replaces those of its words that are typed already. */
function withTypedWords(suggestion: Suggestion, runs: readonly Run[]): Suggestion {
  const run = runs.find(([typed]) => suggestion.name.startsWith(typed));
  return run === undefined ? suggestion : beginningAt(suggestion, run[1]);
}

function suggestionsAt(
  { all, severalWords }: Pool,
  places: readonly number[],
  runs: readonly Run[],
): readonly Suggestion[] {
  const suggestions: Suggestion[] = [];
  for (const place of places) {
    const suggestion = all[place];
    if (suggestion === undefined) continue;
    suggestions.push(runs.length > 0 && severalWords[place] === 1 ? withTypedWords(suggestion, runs) : suggestion);
  }
  return suggestions;
}

/** Terms and labels of the items that the line still lacks, those used already first. */
export const suggestItems: SuggestionSource = (place) => {
  if (place.where !== 'body' || place.row?.body !== 'items') return [];
  if (touchesNumber(place) || !depthsWritten(place)) return [];
  const pool = poolOfSlots(place.row.id, openSlots(place));
  const letter = place.word.charAt(0).toLowerCase();
  const places = usedFirst(pool, letter, countTerms(linesAround(place)), countsOf(place.around.used));
  return suggestionsAt(pool, places, runsBefore(place));
};
