import { daysBetween, dueDate } from '../calculations/dates/days.ts';
import type { Moment, WellLog } from '../model/log.ts';
import type { Due } from '../packs/due.ts';
import type { Limits } from '../packs/limits.ts';
import type { DueDate } from './record.ts';

const events: Readonly<Record<Due['event'], (log: WellLog) => Moment | null>> = {
  finished: ({ finished }) => finished,
  abandoned: ({ abandonments }) => abandonments.at(-1)?.date ?? null,
};

/** The event in words, as the end of `60 days from`. */
const eventText: Readonly<Record<Due['event'], string>> = {
  finished: 'the finish',
  abandoned: 'the abandonment',
};

const dateOf = (moment: Moment | null): string | null => (moment?.valid ? moment.date : null);

function dueDateOf(asked: Due, pack: string, index: number, log: WellLog): DueDate[] {
  const { what, days, event, assumed, text, section, source, known } = asked;
  const moment = events[event](log);
  const from = dateOf(moment);
  const due = from === null ? null : dueDate(from, days);
  if (!moment || from === null || !due?.ok) return [];
  const sent = what === 'copy for the owner' ? null : dateOf(log.reported);
  const stands = { what, pack, key: `${pack}/due/${index}`, text, section, source, known };
  return [{ ...stands, days, event, assumed, from, due: due.value, sent, span: moment.span }];
}

/** What the packs in force want sent in, for which the event that starts the clock has its date. */
export const dueDates = (log: WellLog, { packs = [] }: Limits): DueDate[] =>
  packs.flatMap(({ id, due }) => due.flatMap((each, index) => dueDateOf(each, id, index, log)));

/** Days from a day (YYYY-MM-DD) to the one on which it is due; negative where that has passed. Not a number for no date. */
export function daysLeft({ due }: DueDate, day: string): number {
  const days = daysBetween(day, due);
  return days.ok ? days.value : Number.NaN;
}

const daysText = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;

/** `, in 49 days`; nothing where nobody said which day it is. */
function leftText(each: DueDate, today: string | null): string {
  const left = today === null ? Number.NaN : daysLeft(each, today);
  if (Number.isNaN(left)) return '';
  if (left < 0) return `, ${daysText(-left)} ago`;
  return left === 0 ? ', today' : `, in ${daysText(left)}`;
}

/** `60 days (montana-36-21) from the finish, which is assumed to start the clock`. */
const clockText = ({ text, pack, known, event, assumed }: DueDate): string =>
  `${text} (${pack}${known === 'remembered' ? ', from memory' : ''}) from ${eventText[event]}${
    assumed ? ', which is assumed to start the clock' : ''
  }`;

const stateText = (each: DueDate, today: string | null): string =>
  each.sent === null ? `due ${each.due}${leftText(each, today)}` : `due ${each.due}, sent ${each.sent}`;

/** One due date in words. `today` is YYYY-MM-DD; null leaves the days out. */
export const dueText = (each: DueDate, today: string | null): string =>
  `${each.what} ${stateText(each, today)}: ${clockText(each)}`;
