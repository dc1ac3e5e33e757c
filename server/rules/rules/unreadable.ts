import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { meantOrRemark, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** Something that looks like a value and is none. */
export const rule: Rule = {
  id: 'unreadable',
  severity: 'error',
  title: 'Something that cannot be read',
  why: 'It is left out of the record.',
  mend: 'Write it another way, or put it in a remark after `;`.',
  source: 'the notation',
  flagged: [{ text: 'place [[44x]] -78.3042', fixed: 'place -78.3042  ; 44x' }],
  silent: [{ text: 'place 44.6128 -78.3042' }],
  check: ofProblem('unreadable', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" cannot be read here and is left out', written)}${didYouMean(meant)}`,
    fixes: meantOrRemark,
  }),
};
