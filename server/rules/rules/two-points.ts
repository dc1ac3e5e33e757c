import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A number with two points in it. */
export const rule: Rule = {
  id: 'two-points',
  severity: 'error',
  title: 'A number of two points',
  why: 'Such a number is two numbers run together, or one with a slip; what it stands for cannot be told.',
  mend: 'Write one point, or a blank between two numbers.',
  source: 'the notation',
  flagged: [{ text: 'strata\n  0 - [[3.8.1]] clay', fixed: 'strata\n  0 - 3.81 clay' }],
  silent: [{ text: 'strata\n  0 - 3.8 clay' }],
  check: ofProblem('two-points', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" is not read: a number has one point', written)}${didYouMean(meant)}`,
  }),
};
