import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { writeAfter } from '../fixes.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A quoted text that does not end. */
export const rule: Rule = {
  id: 'unclosed-quote',
  severity: 'warning',
  title: 'A quoted text without its closing mark',
  why: 'All that follows the mark is taken into the text.',
  mend: 'Close the quotation.',
  source: 'the notation',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4, grade [["A53]]',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4, grade "A53"',
    },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4, grade "A53"' }],
  check: ofProblem('unclosed-quote', {
    message: ({ written }) => l10n.t('the text {0} is not closed; add " where it ends', written),
    fixes: (problem) => [writeAfter(l10n.t('Close it here'), spanAt(problem.line, problem), '"', { preferred: true })],
  }),
};
