import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A time of day that no clock shows. */
export const rule: Rule = {
  id: 'bad-time',
  severity: 'error',
  title: 'A time of day that cannot be read',
  why: 'Set times and pumping times are counted from it.',
  mend: 'Write the time as `09:30`, from 00:00 to 23:59.',
  source: 'ISO 8601',
  crew: 'At what time was it?',
  unfixed: 'No clock shows the time, and which one was meant cannot be told from it.',
  flagged: [{ text: 'test pump 40 L/min, [[2026-05-07 25:10]]' }],
  silent: [{ text: 'test pump 40 L/min, 2026-05-07 08:00' }],
  check: ofProblem('bad-time', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" is no time of day; write hours and minutes, such as 09:30', written)}${didYouMean(meant)}`,
  }),
};
