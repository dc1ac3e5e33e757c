import type { Slot } from '../../../grammar/table.ts';
import type { Item } from '../../../grammar/tree.ts';
import { type CompletionPlace, linesAround } from './place.ts';
import { depthsWritten, openSlots } from './slots.ts';
import { plain, type SuggestionSource } from './suggestion.ts';

const takesDate = ({ accepts }: Slot): boolean => accepts.some(({ kind }) => kind === 'moment' || kind === 'period');

const datesOf = ({ value }: Item): readonly string[] => {
  const moments = value.kind === 'period' ? [value.from, value.to] : value.kind === 'moment' ? [value] : [];
  return moments.flatMap(({ date }) => (date === null ? [] : [date]));
};

/** The dates of the log, the latest first. */
const datesIn = (place: CompletionPlace): readonly string[] =>
  [...new Set(linesAround(place).flatMap(({ items }) => items.flatMap(datesOf)))].sort().reverse();

/** Where a date may stand: those that the log names already, and today. */
export const suggestDates: SuggestionSource = (place) => {
  if (place.where !== 'body' || place.word !== '' || !depthsWritten(place)) return [];
  if (!/[\s,]$/.test(place.lead) || !openSlots(place).some(takesDate)) return [];
  const { today } = place.around;
  const known = datesIn(place).map((date) => plain('date', date, date === today ? 'today' : 'as elsewhere in the log'));
  return today === null || datesIn(place).includes(today) ? known : [...known, plain('date', today, 'today')];
};
