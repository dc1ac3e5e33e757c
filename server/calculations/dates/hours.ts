import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { daysBetween } from './days.ts';

export const about: Formula = {
  name: 'hours between times',
  text: 'h = 24 days + difference of the clock, both in one local time',
  source: 'ISO 8601 calendar',
  range: 'no change of the clock between the two',
  caution: null,
};

/**
 * Hours from one time to another, both YYYY-MM-DD HH:MM (a T may stand between) in one local time; negative where the
 * second is the earlier.
 *
 * Source: ISO 8601 calendar. Worked example: 2026-05-05 09:30 to 2026-05-06 08:00: 22.5 h.
 */
export function hoursBetween(from: string, to: string): Outcome {
  const [first, second] = [split(from), split(to)];
  if (first === null || second === null) return refused('not a date and a time of day');
  const days = daysBetween(first.date, second.date);
  return days.ok ? known(days.value * 24 + (second.minutes - first.minutes) / 60) : days;
}

function split(text: string): { date: string; minutes: number } | null {
  const parts = /^(\d{4}-\d{2}-\d{2})[ T](\d{1,2}):(\d{2})$/.exec(text);
  if (!parts) return null;
  const [hour, minute] = [Number(parts[2]), Number(parts[3])];
  if (hour > 24 || minute > 59 || hour * 60 + minute > 24 * 60) return null;
  return { date: parts[1] ?? '', minutes: hour * 60 + minute };
}
