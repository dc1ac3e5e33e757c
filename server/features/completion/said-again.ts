import * as l10n from '@vscode/l10n';
import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { type CompletionPlace, linesAround } from './place.ts';
import { openSlots } from './slots.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

/** Shorter remarks are typed as quickly as they are chosen. */
const leastRemark = 6;

const remarkMarker = 'remark:';
const itemMarker = 'said:';

const remarkKey = ({ remark }: Line): readonly string[] => {
  const text = remark?.text.trim() ?? '';
  return text.length < leastRemark ? [] : [remarkMarker + text];
};

const itemKey = (line: Line, { slot, label, value, end }: Item): readonly string[] =>
  value.kind === 'text' && label !== null
    ? [`${itemMarker}${line.row}/${slot}/${line.text.slice(label.start, end).trim()}`]
    : [];

/** What a line says in words of its own that another line may say again, as keys to count it by: its remark, and its labelled text, such as who was in the crew. */
export const saidKeysOf = rememberedOfLine((line: Line): readonly string[] => [
  ...remarkKey(line),
  ...line.items.flatMap((item) => itemKey(line, item)),
]);

/** What stands behind such keys, that of this log first, from the nearest line up, then what the logs beside it say most. */
function saidBefore(place: CompletionPlace, marker: string): ReadonlyMap<string, string> {
  const details = new Map<string, string>();
  const take = (key: string, detail: string): void => {
    const text = key.startsWith(marker) ? key.slice(marker.length) : '';
    if (text !== '' && !details.has(text)) details.set(text, detail);
  };
  const here = l10n.t('as elsewhere in the log');
  for (const line of [...linesAround(place)].reverse()) for (const key of saidKeysOf(line)) take(key, here);
  const beside = l10n.t('as in the logs beside this one');
  for (const [key] of [...place.around.used].sort(([, a], [, b]) => b - a)) take(key, beside);
  return details;
}

function valuesFrom(said: ReadonlyMap<string, string>, typed: string, from: number): readonly Suggestion[] {
  const begun = typed.toLowerCase();
  return [...said]
    .filter(([text]) => text.toLowerCase().startsWith(begun) && text !== typed)
    .map(([text, detail]) => plain('value', text, detail, { from }));
}

/** In a remark of which something is typed, those remarks of the log and of its folder that begin so. */
export const suggestRemarks: SuggestionSource = (place) => {
  const { line, before, where } = place;
  if (where !== 'remark' || line.remark === null) return [];
  const typed = before.slice(line.remark.start).replace(/^[\s;]+/, '');
  return typed === '' ? [] : valuesFrom(saidBefore(place, remarkMarker), typed, before.length - typed.length);
};

/** Labelled text that the line lacks, as another such line says it: the crew of the day before. */
export const suggestSaidItems: SuggestionSource = (place) => {
  const { row, where, lead, word, at } = place;
  if (where !== 'body' || row?.body !== 'items' || !/[\s,]$/.test(lead)) return [];
  return openSlots(place)
    .filter(({ accepts, labels }) => labels.length > 0 && accepts.some(({ kind }) => kind === 'text'))
    .flatMap(({ slot }) =>
      valuesFrom(saidBefore(place, `${itemMarker}${row.id}/${slot}/`), word, at.column - word.length),
    );
};
