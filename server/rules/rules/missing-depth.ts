import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { writeAfter } from '../fixes.ts';
import { didYouMean } from '../messages.ts';
import { fixesOfMeant, ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const messageOf = ({ written, facts }: ProblemOnLine): string =>
  facts.wanted === 'interval'
    ? l10n.t('an interval such as 0 - 3.8 is missing at "{0}"; write ? for what nobody knows', written)
    : l10n.t('a depth is missing at "{0}"; write ? for what nobody knows', written);

/** A line that needs a depth or an interval and has none. */
export const rule: Rule = {
  id: 'missing-depth',
  severity: 'error',
  title: 'A line without its depths',
  why: 'Without its depths nobody knows where in the well the line belongs, and nothing is reckoned from it.',
  mend: 'Begin the line with its depths: `0 - 3.8`, or `- 3.8` from the base of the line above; `?` for a depth that nobody wrote down.',
  source: 'the notation',
  crew: 'At what depth?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  [[shoe]]',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe ?',
    },
    { text: '[[casing]] steel 168.3 x 6.4' },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' }, { text: 'strata\n  0 - 3.8 clay' }],
  check: ofProblem('missing-depth', {
    message: (problem) => `${messageOf(problem)}${didYouMean(problem.meant)}`,
    fixes: (problem) =>
      problem.meant.length > 0
        ? fixesOfMeant(problem)
        : [
            writeAfter(
              l10n.t('Ask the crew for it, with ?'),
              spanAt(problem.line, problem),
              problem.facts.wanted === 'interval' ? ' ? - ?' : ' ?',
              { preferred: true },
            ),
          ],
  }),
};
