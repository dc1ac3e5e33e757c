import type { Moment, WellLog } from '../../model/log.ts';
import { type Due, dayAfter, daysBetween } from '../../packs/due.ts';
import type { Pack } from '../../packs/limits.ts';
import { saidBy } from '../asked.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const events: Readonly<Record<Due['event'], (log: WellLog) => Moment | null>> = {
  finished: ({ finished }) => finished,
  abandoned: ({ abandonments }) => abandonments.at(-1)?.date ?? null,
};

const words: Readonly<Record<Due['event'], string>> = { finished: 'the finish', abandoned: 'the abandonment' };

const dateOf = (moment: Moment | null): string | null => (moment?.valid ? moment.date : null);

const dayText = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;

function leftText(due: string, today: string | null): string {
  if (today === null) return '';
  const left = daysBetween(today, due);
  if (left < 0) return `, ${dayText(-left)} ago`;
  return left === 0 ? ', today' : `, in ${dayText(left)}`;
}

const clockText = (due: Due, pack: string): string =>
  `${saidBy(due, pack)} from ${words[due.event]}${due.assumed ? ', which is assumed to start the clock' : ''}`;

const late = (due: Due, pack: string, day: string, reported: Moment): Report => ({
  span: reported.span,
  severity: 'warning',
  message: `reported ${reported.date}, ${dayText(daysBetween(day, reported.date ?? day))} after the ${due.what} was due, ${day}: ${clockText(due, pack)}; correct a date, or tell the authority`,
});

const open = (due: Due, pack: string, day: string, event: Moment, today: string | null): Report => ({
  span: event.span,
  message: `the ${due.what} is due ${day}${leftText(day, today)}: ${clockText(due, pack)}; once it is sent, log the day as reported`,
});

/** What is due of a pack. `reported` is the day on which the record was sent in; when the owner had a copy is not logged. */
function reportsOf({ id, due }: Pack, { log, today }: RuleContext): Report[] {
  return due.flatMap((each, index): Report[] => {
    const event = events[each.event](log);
    const from = dateOf(event);
    const day = from === null ? null : dayAfter(from, each.days);
    const sent = dateOf(log.reported);
    if (!event || day === null) return [];
    const limit = `${id}/due/${index}`;
    if (sent === null || !log.reported) return [{ ...open(each, id, day, event, today), limit }];
    return sent > day && each.what !== 'copy for the owner' ? [{ ...late(each, id, day, log.reported), limit }] : [];
  });
}

/** When the record must be sent in. */
export const rule: Rule = {
  id: 'record-due',
  severity: 'information',
  title: 'When the record is due',
  why: 'A record that comes late may cost a fine, and a licence in the end.',
  mend: 'Send the record, and log the day as `reported`. Which event starts the clock is often assumed: look it up.',
  source: 'the pack’s deadline',
  flagged: [
    { text: 'rules montana-36-21\nfinished [[2026-12-20]]' },
    { text: 'rules record-nm\nfinished 2026-11-01\nreported [[2026-11-25]]' },
    { text: 'rules texas-16-76\nabandonment [[2026-12-20]]\n  0 - 61 neat cement' },
  ],
  silent: [
    { text: 'rules montana-36-21\nfinished 2026-11-20\nreported 2026-12-05' },
    { text: 'rules montana-36-21\nfinished ?' },
    { text: 'rules ontario-903\nfinished 2026-11-01\nreported 2026-11-25' },
    { text: 'finished 2026-12-20' },
  ],
  check: (context) => (context.limits.packs ?? []).flatMap((pack) => reportsOf(pack, context)),
};
