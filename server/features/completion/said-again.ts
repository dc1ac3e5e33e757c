import * as l10n from '@vscode/l10n';
import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { type CompletionPlace, linesAround } from './place.ts';
import { type Saying, sayingsIn } from './sayings.ts';
import { openSlots } from './slots.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

/** Shorter remarks are typed as quickly as they are chosen. */
const leastRemark = 6;

const aboutRemarks = 'remark';

/** What the text of such an item is about. */
const aboutItem = (row: string, slot: string): string => `item/${row}/${slot}`;

function remarkOn({ remark }: Line): readonly Saying[] {
  const text = remark?.text.trim() ?? '';
  return text.length < leastRemark ? [] : [{ about: aboutRemarks, text }];
}

const itemOn = ({ row, text }: Line, { slot, label, value, end }: Item): readonly Saying[] =>
  value.kind === 'text' && label !== null && row !== null
    ? [{ about: aboutItem(row, slot), text: text.slice(label.start, end).trim() }]
    : [];

/** What a line says in words of its own that another line may say again: its remark, and its labelled text, such as who was in the crew. */
export const sayingsOn = rememberedOfLine((line: Line): readonly Saying[] => [
  ...remarkOn(line),
  ...line.items.flatMap((item) => itemOn(line, item)),
]);

/** What was said about something and where, that of this log first, from the nearest line up, then what the logs beside it say most. */
function saidBefore(place: CompletionPlace, about: string): ReadonlyMap<string, string> {
  const details = new Map<string, string>();
  for (const line of [...linesAround(place)].reverse())
    for (const saying of sayingsOn(line))
      if (saying.about === about) details.set(saying.text, l10n.t('as elsewhere in the log'));
  for (const text of sayingsIn(place.around.used).get(about) ?? [])
    if (!details.has(text)) details.set(text, l10n.t('as in the logs beside this one'));
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
  return typed === '' ? [] : valuesFrom(saidBefore(place, aboutRemarks), typed, before.length - typed.length);
};

/** Labelled text that the line lacks, as another such line says it: the crew of the day before. */
export const suggestSaidItems: SuggestionSource = (place) => {
  const { row, where, lead, word, at } = place;
  if (where !== 'body' || row?.body !== 'items' || !/[\s,]$/.test(lead)) return [];
  return openSlots(place)
    .filter(({ accepts, labels }) => labels.length > 0 && accepts.some(({ kind }) => kind === 'text'))
    .flatMap(({ slot }) => valuesFrom(saidBefore(place, aboutItem(row.id, slot)), word, at.column - word.length));
};
