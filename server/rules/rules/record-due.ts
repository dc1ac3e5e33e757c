import { clockText, daysLeft, daysText, leftText } from '../../record/due.ts';
import type { DueDate } from '../../record/record.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const late = (due: DueDate, sent: string, { log }: RuleContext): Report => ({
  span: log.reported?.span ?? due.span,
  severity: 'warning',
  message: `reported ${sent}, ${daysText(-daysLeft(due, sent))} after the ${due.what} was due, ${due.due}: ${clockText(due)}; correct a date, or tell the authority`,
  limit: due.key,
});

const open = (due: DueDate, { today }: RuleContext): Report => ({
  span: due.span,
  message: `the ${due.what} is due ${due.due}${leftText(due, today)}: ${clockText(due)}; once it is sent, log the day as reported`,
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
