import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { writeAfter } from '../fixes.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** An `# allow` that does not say why. */
export const rule: Rule = {
  id: 'allow-without-reason',
  severity: 'warning',
  title: 'An allow without a reason',
  why: 'A finding that is silenced with no reason looks, years later, like a fault that nobody saw.',
  mend: 'Write the reason after a colon: `# allow RULE: reason`.',
  source: 'the notation',
  flagged: [
    {
      text: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand [[# allow interval-gap]]',
      fixed: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow interval-gap: ?',
    },
  ],
  silent: [{ text: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow interval-gap: no returns' }],
  check: ofProblem('allow-without-reason', {
    message: () => l10n.t('this allow gives no reason; write it after a colon: # allow RULE: reason'),
    fixes: (problem) => [
      writeAfter(l10n.t('Leave the reason open as a question'), spanAt(problem.line, problem), ': ?', {
        preferred: true,
      }),
    ],
  }),
};
