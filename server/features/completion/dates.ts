import * as l10n from '@vscode/l10n';
import { rememberedOfLine } from '../../../grammar/line-notes.ts';
import { remembered } from '../../../grammar/remembered.ts';
import type { Row, Slot } from '../../../grammar/table.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { DAY, dateAt, daysBetween, midnight } from '../../calculations/dates/days.ts';
import { lackedBy } from '../next-item.ts';
import { type CompletionPlace, linesAbove, linesBelow } from './place.ts';
import { depthsWritten, openSlots } from './slots.ts';
import { plain, type Suggestion, type SuggestionSource } from './suggestion.ts';

const takesDate = ({ accepts }: Slot): boolean => accepts.some(({ kind }) => kind === 'moment' || kind === 'period');

const datesOf = ({ value }: Item): readonly string[] => {
  const moments = value.kind === 'period' ? [value.from, value.to] : value.kind === 'moment' ? [value] : [];
  return moments.flatMap(({ date }) => (date === null ? [] : [date]));
};

const datesOn = rememberedOfLine(({ items }: Line): readonly string[] => items.flatMap(datesOf));

const datesIn = (lines: readonly Line[]): readonly string[] => lines.flatMap(datesOn);

/** The dates of the log: those above from the nearest up, then those below. */
const datesAround = remembered((place: CompletionPlace): readonly string[] => [
  ...datesIn([...linesAbove(place)].reverse()),
  ...datesIn(linesBelow(place)),
]);

/** Work that took longer is not told day by day. */
const mostDays = 40;

/** Tests, disinfection and levels mostly follow within a week. */
const daysAfter = 7;

/** So many days from a date on, or back from it where `step` is -1, itself the first; none from what is no date. */
function daysFrom(date: string | null | undefined, count: number, step: 1 | -1 = 1): readonly string[] {
  const first = midnight(date ?? '');
  return first === null ? [] : Array.from({ length: count }, (_, day) => dateAt(first + day * step * DAY));
}

/** The days behind the one on which the work was finished. */
const daysAfterWork = ({ snapshot: { log } }: CompletionPlace): readonly string[] =>
  daysFrom(log.finished?.date, daysAfter + 1).slice(1);

/** The days from the one on which the work began to the one on which it was finished. */
function daysOfWork({ snapshot: { log } }: CompletionPlace): readonly string[] {
  const days = daysBetween(log.began?.date ?? '', log.finished?.date ?? '');
  const count = days.ok ? days.value + 1 : 0;
  return count > 0 && count <= mostDays ? daysFrom(log.began?.date, count) : [];
}

/** Days looked through for one of a certain number, and for one of a certain month and number. */
const [aMonth, aYear] = [31, 366];

interface Meant {
  readonly dates: readonly string[];
  readonly detail: string;
}

/** The days from one on, or back from it, of which month and day, or the day alone, begin so. */
function daysBeginning(from: string | null, typed: string, step: 1 | -1): readonly string[] {
  const [most, told] = typed.includes('-') ? [aYear, 'MM-DD'.length] : [aMonth, 'DD'.length];
  return daysFrom(from, most, step).filter((date) => date.slice(-told).startsWith(typed));
}

/**
 * The whole dates that a day, or month and day, may mean of which so much is typed: of days the next from the latest that
 * the log names, else, as for month and day, the last until today.
 */
function datesMeant(place: CompletionPlace, typed: string): Meant {
  const latest = [...datesAround(place)].sort().at(-1) ?? null;
  const next = /^\d\d?$/.test(typed) ? daysBeginning(latest, typed, 1) : [];
  if (next.length > 0) return { dates: next, detail: l10n.t('the first such day from {0} on', latest ?? '') };
  const isBegun = /^\d\d?(?:-\d{0,2})?$/.test(typed);
  const dates = isBegun ? daysBeginning(place.around.today, typed, -1) : [];
  return { dates, detail: l10n.t('the last such day until today') };
}

/** Found by the whole date, by month and day, and by the day alone. */
const dateNamed = (date: string, detail: string, from: number | null): Suggestion =>
  plain('date', date, detail, { filter: [date.slice(8), date.slice(5), date].join(' '), from });

/** Dates that the log names, today, and the days of the work and behind it. */
function datesKnown(place: CompletionPlace): Map<string, string> {
  const { today } = place.around;
  const detailOf = (date: string, detail: string): string => (date === today ? l10n.t('today') : detail);
  const details = new Map(datesAround(place).map((date) => [date, detailOf(date, l10n.t('as elsewhere in the log'))]));
  if (today !== null) details.set(today, l10n.t('today'));
  for (const date of daysOfWork(place))
    if (!details.has(date)) details.set(date, detailOf(date, l10n.t('a day of the work')));
  for (const date of daysAfterWork(place))
    if (!details.has(date)) details.set(date, detailOf(date, l10n.t('a day after the work')));
  return details;
}

const beginning = /(?<=[\s,])\d[\d-]*$/;

/** Dates for what of one is typed so far; null where none may stand. Where a date comes next, also those that nobody named yet. */
function datesHere(place: CompletionPlace, isNext: boolean): readonly Suggestion[] | null {
  if (place.where !== 'body' || place.word !== '' || !depthsWritten(place)) return null;
  if (!/[\s,][\d-]*$/.test(place.lead) || !openSlots(place).some(takesDate)) return null;
  const typed = beginning.exec(place.lead);
  const details = datesKnown(place);
  const meant = isNext && typed !== null ? datesMeant(place, typed[0]) : null;
  for (const date of meant?.dates ?? []) if (!details.has(date)) details.set(date, meant?.detail ?? '');
  const dates = [...details].map(([date, detail]) => dateNamed(date, detail, typed?.index ?? null));
  return typed === null ? dates : dates.filter(({ filter }) => ` ${filter}`.includes(` ${typed[0]}`));
}

const beginsWithDate = ({ slots: [first] }: Row): boolean => first !== undefined && takesDate(first);

/** True where a date is what comes next: the line begins with it, or it is usually said and at most one other item is left out. */
function isNext({ line, row }: CompletionPlace): boolean {
  if (row === null || beginsWithDate(row)) return row !== null;
  const lacked = lackedBy(line, row, null);
  return lacked.some(takesDate) && lacked.filter((slot) => !takesDate(slot)).length <= 1;
}

/** Where a date comes next: those that the log names, the nearest first, today, and the days of the work. */
export const suggestNextDate: SuggestionSource = (place) => (isNext(place) ? (datesHere(place, true) ?? []) : []);

/** True where such a line begins with a date and some are known, be it today's. */
export const knowsDates = (row: Row, place: CompletionPlace): boolean =>
  beginsWithDate(row) && (place.around.today !== null || datesAround(place).length > 0);

/** The same where a date may stand, but other items are more likely. */
export const suggestDates: SuggestionSource = (place) => (isNext(place) ? [] : (datesHere(place, false) ?? []));
