import * as l10n from '@vscode/l10n';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A keyword with a slip in its spelling; the line is read all the same. */
export const rule: Rule = {
  id: 'near-keyword',
  severity: 'warning',
  title: 'A keyword that is nearly right',
  why: 'The line is read as the nearest keyword, which may not be the one that was meant.',
  mend: 'Correct the spelling.',
  source: 'the notation',
  flagged: [
    {
      text: '[[casng]] +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
    },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' }],
  check: ofProblem('near-keyword', {
    message: ({ written, meant }) => l10n.t('"{0}" is read as {1}; correct the spelling', written, meant[0] ?? '?'),
    safe: true,
  }),
};
