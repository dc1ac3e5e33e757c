import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A number with a comma in it. */
export const rule: Rule = {
  id: 'decimal-comma',
  severity: 'error',
  title: 'A comma between digits',
  why: 'A comma is a decimal mark in one country and parts thousands in another; read wrongly, a depth is out by a thousand.',
  mend: 'Write a point for decimals, nothing for thousands, and a blank after a comma that parts two values.',
  source: 'the notation',
  flagged: [{ text: 'strata\n  0 - [[3,8]] clay', fixed: 'strata\n  0 - 3.8 clay' }, { text: 'ground [[1,287.4]] m' }],
  silent: [
    { text: 'strata\n  0 - 3.8 clay' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  centralizers 1.5, 4, 6.7' },
  ],
  check: ofProblem('decimal-comma', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" is not read: a comma between digits may be a decimal mark or part two numbers', written)}${didYouMean(meant)}`,
  }),
};
