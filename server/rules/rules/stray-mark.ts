import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { fix } from '../fixes.ts';
import { didYouMean } from '../messages.ts';
import { fixesOfMeant, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A mark that means nothing where it stands. */
export const rule: Rule = {
  id: 'stray-mark',
  severity: 'warning',
  title: 'A mark that means nothing here',
  why: 'What the mark was meant to say is lost.',
  mend: 'Remove it, or put what belongs to a remark after `;`.',
  source: 'the notation',
  flagged: [{ text: 'casing +0.45 - 7.2 steel [[=]] 168.3 x 6.4', fixed: 'casing +0.45 - 7.2 steel  168.3 x 6.4' }],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4' }],
  check: ofProblem('stray-mark', {
    message: ({ written, meant }) =>
      `${l10n.t('the mark "{0}" means nothing here and is left out; remove it, or put a remark after ;', written)}${didYouMean(meant)}`,
    fixes: (problem) => [
      ...fixesOfMeant(problem),
      fix(l10n.t('Remove the mark'), [{ span: spanAt(problem.line, problem), text: '' }], {
        preferred: problem.meant.length === 0,
        safe: problem.meant.length === 0,
      }),
    ],
  }),
};
