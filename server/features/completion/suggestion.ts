import type { ListId } from '../../../grammar/terms/term.ts';
import type { CompletionPlace } from './place.ts';

/** What a suggestion is explained by, looked up when someone asks; the text itself where only the log's folder knows it. */
export type About =
  | { readonly kind: 'text'; readonly markdown: string }
  | { readonly kind: 'row'; readonly id: string }
  | { readonly kind: 'term'; readonly list: ListId; readonly id: string }
  | { readonly kind: 'pack'; readonly id: string }
  | { readonly kind: 'rule'; readonly id: string };

export interface Suggestion {
  readonly label: string;
  readonly kind:
    | 'keyword'
    | 'template'
    | 'term'
    | 'value'
    | 'unit'
    | 'label'
    | 'depth'
    | 'size'
    | 'date'
    | 'pack'
    | 'rule';
  readonly detail: string;
  /** What is put in; a snippet where `snippet` is true. */
  readonly insert: string;
  readonly snippet: boolean;
  /** What typing is matched with: the label and its short forms. */
  readonly filter: string;
  /** `filter` in lower case with a blank before each word, and the label in lower case. */
  readonly words: string;
  readonly name: string;
  readonly about: About | null;
  /** Where what it replaces begins, for a term of several words whose first are typed already; else null. */
  readonly from: number | null;
  /** True where something is known for what comes behind it, so that the next list may open at once. */
  readonly opens: boolean;
}

/** One kind of suggestions; none where the place is not its own. */
export type SuggestionSource = (place: CompletionPlace) => readonly Suggestion[];

const matchedBy = (filter: string): string => ` ${filter.toLowerCase()}`;

/** A suggestion that puts in its own label. */
export const plain = (
  kind: Suggestion['kind'],
  label: string,
  detail: string,
  more: Partial<Suggestion> = {},
): Suggestion => ({
  kind,
  label,
  detail,
  insert: label,
  snippet: false,
  filter: label,
  words: matchedBy(more.filter ?? label),
  name: label.toLowerCase(),
  about: null,
  from: null,
  opens: false,
  ...more,
});

/** The suggestion for what begins further left, so that it is matched with its label from there. */
export const beginningAt = (suggestion: Suggestion, from: number): Suggestion => ({
  ...suggestion,
  filter: suggestion.label,
  words: matchedBy(suggestion.label),
  from,
});

/** True where a word of what it is matched with begins as the letters typed do, in lower case. */
export const begins = ({ words }: Suggestion, typed: string): boolean => words.includes(` ${typed}`);
