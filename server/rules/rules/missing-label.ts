import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A value that needs the word before it that says what it is. */
export const rule: Rule = {
  id: 'missing-label',
  severity: 'error',
  title: 'A value without its label',
  why: 'Where two values of one kind could meet, only the label tells them apart.',
  mend: 'Put the label before the value.',
  source: 'the notation',
  flagged: [{ text: 'test pump 40 L/min, [[50 m]]', fixed: 'test pump 40 L/min, intake 50 m' }],
  silent: [{ text: 'test pump 40 L/min, intake 50 m' }],
  check: ofProblem('missing-label', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" needs the word before it that says what it is', written)}${didYouMean(meant)}`,
  }),
};
