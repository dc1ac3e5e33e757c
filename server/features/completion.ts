import { type Span, spanAt } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { suggestAllow } from './completion/allow.ts';
import { suggestDepths } from './completion/depths.ts';
import { suggestItems } from './completion/items.ts';
import { suggestKeywords } from './completion/keywords.ts';
import { completionPlace } from './completion/place.ts';
import type { Suggestion, SuggestionSource } from './completion/suggestion.ts';
import { suggestUnits } from './completion/units.ts';
import { suggestWords } from './completion/words.ts';
import type { Position } from './position.ts';

/** What fits at the cursor, best first; each replaces `replace` unless it names a stretch of its own. */
export interface Completion {
  readonly replace: Span;
  readonly suggestions: readonly Suggestion[];
  /**
   * True where the line plainly waits for one of them, so that they may be shown after a blank. Elsewhere a list that
   * opens by itself would take the next Enter, which was meant to end the line.
   */
  readonly unasked: boolean;
}

const awaited: ReadonlySet<Suggestion['kind']> = new Set(['unit', 'pack', 'rule', 'depth']);

const sources: readonly SuggestionSource[] = [
  suggestAllow,
  suggestDepths,
  suggestKeywords,
  suggestWords,
  suggestUnits,
  suggestItems,
];

/** True where a word of what it is matched with begins as the word typed does. */
const fits = ({ filter }: Suggestion, letter: string): boolean =>
  letter === '' || ` ${filter.toLowerCase()}`.includes(` ${letter}`);

/** What may be typed at the cursor. Nothing within remarks, comments and lines too long to be read. */
export function complete(snapshot: Snapshot, position: Position): Completion | null {
  const place = completionPlace(snapshot, position);
  if (place === null) return null;
  const letter = place.word.charAt(0).toLowerCase();
  const suggestions = sources.flatMap((source) => source(place)).filter((each) => fits(each, letter));
  const { line, column } = place.at;
  const [first] = suggestions;
  return {
    replace: spanAt(line, { start: column - place.word.length, end: column }),
    suggestions,
    unasked: place.where !== 'line-start' && first !== undefined && awaited.has(first.kind),
  };
}
