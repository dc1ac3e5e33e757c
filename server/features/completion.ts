import { type Span, spanAt } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { suggestAllow } from './completion/allow.ts';
import { suggestDates, suggestNextDate } from './completion/dates.ts';
import { suggestDepths } from './completion/depths.ts';
import { suggestHeadValues } from './completion/head-values.ts';
import { suggestItems } from './completion/items.ts';
import { suggestKeywords } from './completion/keywords.ts';
import { nearNames } from './completion/near-names.ts';
import { suggestPipes } from './completion/pipes.ts';
import { type Around, alone, type CompletionPlace, completionPlace } from './completion/place.ts';
import { suggestRemarks, suggestSaidItems } from './completion/said-again.ts';
import { begins, type Suggestion, type SuggestionSource } from './completion/suggestion.ts';
import { suggestUnits } from './completion/units.ts';
import { suggestWords } from './completion/words.ts';
import type { Position } from './position.ts';

/** What fits at the cursor, best first; each replaces `replace` unless it names a stretch of its own. */
export interface Completion {
  readonly replace: Span;
  readonly suggestions: readonly Suggestion[];
  /** The word that the cursor stands at the end of; may be empty. */
  readonly typed: string;
  /**
   * True where the line plainly waits for one of them, so that they may be shown after a blank. Elsewhere a list that
   * opens by itself would take the next Enter, which was meant to end the line.
   */
  readonly unasked: boolean;
}

const awaited: ReadonlySet<Suggestion['kind']> = new Set(['unit', 'pack', 'value', 'rule', 'depth', 'size', 'date']);

const sources: readonly SuggestionSource[] = [
  suggestAllow,
  suggestDepths,
  suggestKeywords,
  suggestHeadValues,
  suggestWords,
  suggestRemarks,
  suggestSaidItems,
  suggestNextDate,
  suggestPipes,
  suggestUnits,
  suggestItems,
  suggestDates,
];

/** What is called as the word typed begins, then what is also called so; or what is spelled nearly like it and begins with its letter where nothing does. */
function fitting(place: CompletionPlace): readonly Suggestion[] {
  const word = place.word.toLowerCase();
  const suggestions = sources.flatMap((source) => source(place));
  if (word === '') return suggestions;
  const [called, alsoCalled]: readonly [Suggestion[], Suggestion[]] = [[], []];
  for (const each of suggestions) {
    if (each.name.startsWith(word)) called.push(each);
    else if (begins(each, word)) alsoCalled.push(each);
  }
  if (called.length + alsoCalled.length > 0) return [...called, ...alsoCalled];
  return [...nearNames(place), ...suggestions.filter((each) => begins(each, word.charAt(0)))];
}

/** What may be typed at the cursor. Nothing within comments and lines too long to be read. */
export function complete(snapshot: Snapshot, position: Position, around: Around = alone): Completion | null {
  const place = completionPlace(snapshot, position, around);
  if (place === null) return null;
  const suggestions = fitting(place);
  const { line, column } = place.at;
  const [first] = suggestions;
  return {
    replace: spanAt(line, { start: column - place.word.length, end: column }),
    suggestions,
    typed: place.word,
    unasked: place.where !== 'line-start' && first !== undefined && awaited.has(first.kind),
  };
}
