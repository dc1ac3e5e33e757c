import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A date that no calendar has, or that is not written year first. */
export const rule: Rule = {
  id: 'bad-date',
  severity: 'error',
  title: 'A date that cannot be read',
  why: 'Dates are written year, month, day, so that nobody has to guess which of 05-06 is the month. Set times and due dates are counted from them.',
  mend: 'Write the date as `2026-05-04`.',
  source: 'ISO 8601',
  crew: 'Which day was it?',
  flagged: [
    { text: 'began [[2026-02-30]]' },
    { text: 'began [[5/7/26]]' },
    { text: 'began [[2026-5-4]]', fixed: 'began 2026-05-04' },
  ],
  silent: [{ text: 'began 2026-05-04' }],
  check: ofProblem('bad-date', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" is no date as this log writes them, year-month-day such as 2026-05-04', written)}${didYouMean(meant)}`,
  }),
};
