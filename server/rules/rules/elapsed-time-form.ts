import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A time at the head of a test line that can be read in two ways. */
export const rule: Rule = {
  id: 'elapsed-time-form',
  severity: 'error',
  title: 'A time of a test that can be read in two ways',
  why: '`1:30` may be an hour and a half or a minute and a half, and `0930` a time of day or 930 minutes. Drawdown is plotted against it.',
  mend: 'Write minutes, `30 s`, `1h30`, or the time of day as `08:15`.',
  source: 'the notation',
  flagged: [
    { text: 'test pump 40 L/min\n  0 5.2\n  [[1:30]] 6.3' },
    { text: 'test pump 40 L/min\n  0 5.2\n  [[0930]] 6.3', fixed: 'test pump 40 L/min\n  0 5.2\n  09:30 6.3' },
  ],
  silent: [{ text: 'test pump 40 L/min\n  0 5.2\n  1h30 6.3\n  90 s 6.4' }],
  check: ofProblem('elapsed-time-form', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" can be read in more than one way; write minutes, 30 s, 1h30, or a time of day such as 08:15', written)}${didYouMean(meant)}`,
  }),
};
