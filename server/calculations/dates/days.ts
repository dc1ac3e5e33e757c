import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'days between dates',
  text: 'number of midnights between two dates of the Gregorian calendar; due date = date + days',
  source: 'ISO 8601 calendar; day number 0 of the Modified Julian count, 1858-11-17, to 51544, 2000-01-01',
  range: 'years 0001 to 9999',
  caution: null,
};

/** Milliseconds of a day of the calendar. */
export const DAY = 86_400_000;

/**
 * Days from one date to another, both YYYY-MM-DD; negative where the second is the earlier.
 *
 * Source: ISO 8601 calendar. Worked example: 2026-05-04 to 2026-05-06: 2. 1858-11-17 to 2000-01-01: 51,544.
 */
export function daysBetween(from: string, to: string): Outcome {
  const [first, second] = [midnight(from), midnight(to)];
  if (first === null || second === null) return refused('not a date of the calendar');
  return known(Math.round((second - first) / DAY));
}

/** The date a number of whole days after another, YYYY-MM-DD. Worked example: 2026-05-06 and 30 days: 2026-06-05. */
export function dueDate(from: string, days: number): Outcome<string> {
  const start = midnight(from);
  if (start === null) return refused('not a date of the calendar');
  if (!Number.isInteger(days)) return refused('not a whole number of days');
  const due = new Date(start + days * DAY);
  const year = due.getUTCFullYear();
  if (!(year >= 1 && year <= 9999)) return refused('the due date is beyond the calendar');
  return known(dateAt(start + days * DAY));
}

/** The date of a midnight, YYYY-MM-DD. */
export const dateAt = (midnight: number): string => new Date(midnight).toISOString().slice(0, 10);

/** Milliseconds of a date's midnight; null for a date that the calendar does not have. */
export function midnight(date: string): number | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date) || date.startsWith('0000')) return null;
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) || dateAt(time) !== date ? null : time;
}
