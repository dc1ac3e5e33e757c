import * as l10n from '@vscode/l10n';
import { nearWords } from '../../../grammar/near.ts';
import { keywords, rowByKeyword } from '../../../grammar/table.ts';
import { longForm, nearest } from '../../../grammar/terms/index.ts';
import type { CompletionPlace } from './place.ts';
import { listsOf, openSlots } from './slots.ts';
import { plain, type Suggestion } from './suggestion.ts';

/** A word shorter than this is near to too much. */
const leastLetters = 3;
const most = 5;

const nearKeywords = ({ word }: CompletionPlace): readonly Suggestion[] =>
  nearWords(word.toLowerCase(), keywords)
    .slice(0, most)
    .map((keyword) => {
      const row = rowByKeyword(keyword);
      return plain('keyword', keyword, row ? l10n.t(row.doc) : '', {
        filter: word,
        about: row ? { kind: 'row', id: row.id } : null,
      });
    });

const nearTerms = (place: CompletionPlace): readonly Suggestion[] =>
  nearest(place.word, openSlots(place).flatMap(listsOf), most).map((sense) =>
    plain('term', longForm(sense), l10n.t('spelled nearly like "{0}"', place.word), {
      filter: place.word,
      about: { kind: 'term', list: sense.list, id: sense.term.id },
    }),
  );

/** Names that a word with a slip in it was probably meant for; asked for where nothing begins as it does. */
export function nearNames(place: CompletionPlace): readonly Suggestion[] {
  if (place.word.length < leastLetters) return [];
  if (place.where === 'line-start') return nearKeywords(place);
  return place.where === 'body' && place.row?.body === 'items' ? nearTerms(place) : [];
}
