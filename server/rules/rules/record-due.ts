import * as l10n from '@vscode/l10n';
import { daysLeft } from '../../record/due.ts';
import type { DueDate } from '../../record/record.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const daysText = (days: number): string => (days === 1 ? l10n.t('1 day') : l10n.t('{0} days', days));

/** `, in 49 days`; nothing where nobody said which day it is. */
function leftText(due: DueDate, today: string | null): string {
  const left = today === null ? Number.NaN : daysLeft(due, today);
  if (Number.isNaN(left)) return '';
  if (left < 0) return l10n.t(', {0} ago', daysText(-left));
  return left === 0 ? l10n.t(', today') : l10n.t(', in {0}', daysText(left));
}

/** What is allowed, by the event that starts the clock; where that is only assumed, the words say so. */
const clockWords: Readonly<Record<DueDate['event'], (days: string, assumed: boolean) => string>> = {
  finished: (days, assumed) =>
    assumed
      ? l10n.t('{0} from the finish, which is assumed to start the clock', days)
      : l10n.t('{0} from the finish', days),
  abandoned: (days, assumed) =>
    assumed
      ? l10n.t('{0} from the abandonment, which is assumed to start the clock', days)
      : l10n.t('{0} from the abandonment', days),
};

const openWords: Readonly<Record<DueDate['what'], (day: string, left: string, clock: string) => string>> = {
  record: (day, left, clock) =>
    l10n.t('the record is due {0}{1}: {2}; once it is sent, log the day as reported', day, left, clock),
  'copy for the owner': (day, left, clock) =>
    l10n.t('the copy for the owner is due {0}{1}: {2}; once it is sent, log the day as reported', day, left, clock),
  'plugging report': (day, left, clock) =>
    l10n.t('the plugging report is due {0}{1}: {2}; once it is sent, log the day as reported', day, left, clock),
};

const lateWords = (sent: string, days: string, day: string, clock: string): string =>
  l10n.t(
    'reported {0}, {1} after the record was due, {2}: {3}; correct a date, or tell the authority',
    sent,
    days,
    day,
    clock,
  );

const latePluggingWords: typeof lateWords = (sent, days, day, clock) =>
  l10n.t(
    'reported {0}, {1} after the plugging report was due, {2}: {3}; correct a date, or tell the authority',
    sent,
    days,
    day,
    clock,
  );

const allowedText = ({ text, pack, known }: DueDate): string =>
  known === 'remembered' ? l10n.t('{0} ({1}, from memory)', text, pack) : `${text} (${pack})`;

const clockText = (due: DueDate): string => clockWords[due.event](allowedText(due), due.assumed);

const late = (due: DueDate, sent: string, { log }: RuleContext): Report => ({
  span: log.reported?.span ?? due.span,
  severity: 'warning',
  message: (due.what === 'plugging report' ? latePluggingWords : lateWords)(
    sent,
    daysText(-daysLeft(due, sent)),
    due.due,
    clockText(due),
  ),
  limit: due.key,
});

const open = (due: DueDate, { today }: RuleContext): Report => ({
  span: due.span,
  message: openWords[due.what](due.due, leftText(due, today), clockText(due)),
  limit: due.key,
});

/** When the owner had a copy is not logged: once the record was sent, nothing is said of it. */
function reportsOf(due: DueDate, context: RuleContext): Report[] {
  if (due.sent !== null) return due.sent > due.due ? [late(due, due.sent, context)] : [];
  return due.what === 'copy for the owner' && context.log.reported?.valid ? [] : [open(due, context)];
}

/** When the record must be sent in. */
export const rule: Rule = {
  id: 'record-due',
  severity: 'information',
  title: 'When the record is due',
  why: 'A record that comes late may cost a fine, and a licence in the end.',
  mend: 'Send the record, and log the day as `reported`. Which event starts the clock is often assumed: look it up.',
  source: 'the pack’s deadline',
  unfixed: 'The record must be sent; the log can only say that it was.',
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
  check: (context) => context.record.due.flatMap((each) => reportsOf(each, context)),
};
