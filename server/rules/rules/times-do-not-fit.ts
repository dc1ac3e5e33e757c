import * as l10n from '@vscode/l10n';
import type { DrilledInterval, Moment, Period, Shift, WellLog } from '../../model/log.ts';
import { intervalText, numberText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

/** Seconds of a moment that has a date and a time; null where one is missing, doubtful or none of the calendar. */
const secondsOf = (moment: Moment | null): number | null =>
  moment?.date && moment.time && moment.valid && !moment.doubtful
    ? Date.parse(`${moment.date}T${moment.time}Z`) / 1000
    : null;

function lengthOf(period: Period | null): number | null {
  const [from, to] = [secondsOf(period?.from ?? null), secondsOf(period?.to ?? null)];
  return from === null || to === null || to <= from ? null : to - from;
}

const minutes = (seconds: number): string => `${numberText(seconds / 60)} min`;

/** A time that the interval cannot have taken, for its hours are shorter. */
function longerThanItsHours({ interval, time, when }: DrilledInterval, { units }: WellLog): Report[] {
  const hours = lengthOf(when);
  if (!time || time.value === null || hours === null || time.value <= hours + 60) return [];
  return [
    {
      span: time.span,
      doubts: [time, when?.to],
      message: l10n.t(
        '{0} is said to have taken {1}, but the hours beside it are only {2} apart; correct the time or the hours',
        intervalText(interval, units),
        minutes(time.value),
        minutes(hours),
      ),
    },
  ];
}

const allHours = (shifts: readonly Shift[]): number | null =>
  shifts.reduce<number | null>((sum, { hours }) => {
    const own = lengthOf(hours);
    return sum === null || own === null ? null : sum + own;
  }, 0);

function longerText(shifts: number, drilled: string, hours: string): string {
  return shifts === 1
    ? l10n.t(
        'the intervals drilled took {0} h, but the shift has only {1} h; correct a time, or log the shift that is missing',
        drilled,
        hours,
      )
    : l10n.t(
        'the intervals drilled took {0} h, but the {1} shifts have only {2} h; correct a time, or log the shift that is missing',
        drilled,
        shifts,
        hours,
      );
}

/** More time at drilling than all shifts together have; said at the first shift. */
function longerThanTheShifts({ shifts, drilling }: WellLog): Report[] {
  const [first] = shifts;
  const hours = allHours(shifts);
  const drilled = drilling.flatMap(({ intervals }) => intervals).reduce((sum, { time }) => sum + (time?.value ?? 0), 0);
  if (!first || hours === null || drilled <= hours + 60) return [];
  return [
    {
      span: first.hours?.span ?? first.span,
      doubts: shifts.flatMap((each) => [each.hours?.from, each.hours?.to]),
      message: longerText(shifts.length, numberText(drilled / 3600), numberText(hours / 3600)),
    },
  ];
}

/** Times of drilling that are longer than the hours that there were. */
export const rule: Rule = {
  id: 'times-do-not-fit',
  severity: 'warning',
  title: 'Times of drilling longer than the hours that there were',
  why: 'Rates of penetration, and the breaks read from them, are reckoned from these times.',
  mend: 'Correct a time or the hours, or log the shift that is missing.',
  source: 'the clock',
  crew: 'How long did it take?',
  flagged: [
    {
      text: 'drilling\n  7.2 - 13.2 [[48 min]], 2026-05-05 15:00 - 15:18',
      fixed: 'drilling\n  7.2 - 13.2 48? min, 2026-05-05 15:00 - 15:18',
    },
    { text: 'shift [[2026-05-05 07:00 - 08:00]], 0 - 61\ndrilling\n  0 - 30 40 min\n  - 61 50 min' },
  ],
  silent: [
    { text: 'drilling\n  7.2 - 13.2 18 min, 2026-05-05 15:00 - 15:18' },
    { text: 'shift 2026-05-05 07:00 - 17:30, 0 - 61\ndrilling\n  0 - 30 40 min\n  - 61 50 min' },
    { text: 'shift 2026-05-05, 0 - 61\ndrilling\n  0 - 30 40 min' },
    { text: 'drilling\n  0 - 30 40 min' },
  ],
  check: ({ log }) => [
    ...log.drilling.flatMap(({ intervals }) => intervals.flatMap((each) => longerThanItsHours(each, log))),
    ...longerThanTheShifts(log),
  ],
};
