import type { Value, Moment as WrittenMoment } from '../../grammar/tree.ts';
import type { Moment, Period } from './log.ts';
import { itemIn, type Source, spanOf, writtenAt } from './source.ts';

const dayLength = 86_400_000;

/** True for a date of the calendar, YYYY-MM-DD. */
function isCalendarDate(date: string): boolean {
  const time = Date.parse(`${date}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === date;
}

/** The day after a date of the calendar. */
function dayAfter(date: string): string {
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) ? date : new Date(time + dayLength).toISOString().slice(0, 10);
}

export const momentOf = (source: Source, moment: WrittenMoment): Moment => ({
  date: moment.date,
  time: moment.time,
  valid: moment.date === null || isCalendarDate(moment.date),
  approximate: moment.approximate,
  doubtful: moment.doubtful,
  span: spanOf(source, moment),
});

/** A date that is only said to be unknown, or that is not written beside its label. */
const undated = (source: Source, value: Value): Moment => ({
  date: null,
  time: null,
  valid: true,
  approximate: false,
  doubtful: false,
  span: spanOf(source, value),
});

/** A value as a moment: a date, a `?`, or the bare label of one. */
export function momentOfValue(source: Source, value: Value): Moment | null {
  if (value.kind === 'moment') return momentOf(source, value);
  const unsaid =
    value.kind === 'unknown' || value.kind === 'flag' || (value.kind === 'quantity' && value.number === null);
  return unsaid ? undated(source, value) : null;
}

/** The moment in a slot. */
export function momentIn(source: Source, slot: string): Moment | null {
  const item = itemIn(source, slot);
  return item ? momentOfValue(source, item.value) : null;
}

const hasDate = (written: string): boolean => /\d-\d/.test(written);

/** The end of a period written as a time of day is on the date of its start; on the next where that would be earlier. */
function endOf(source: Source, from: Moment, end: WrittenMoment): Moment {
  const to = momentOf(source, end);
  if (from.date === null || hasDate(writtenAt(source, end))) return to;
  const overnight = from.time !== null && to.time !== null && to.time < from.time;
  return { ...to, date: overnight ? dayAfter(from.date) : from.date };
}

/** The period in a slot; a single moment is the end of it that `single` says. */
export function periodIn(source: Source, slot: string, single: 'from' | 'to'): Period | null {
  const value = itemIn(source, slot)?.value;
  if (!value) return null;
  const span = spanOf(source, value);
  if (value.kind === 'period') {
    const from = momentOf(source, value.from);
    return { from, to: endOf(source, from, value.to), span };
  }
  const moment = momentOfValue(source, value);
  if (!moment) return null;
  return single === 'from' ? { from: moment, to: null, span } : { from: null, to: moment, span };
}
