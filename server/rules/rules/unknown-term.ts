import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A word that no list of the trade knows. */
export const rule: Rule = {
  id: 'unknown-term',
  severity: 'hint',
  title: 'A word that no list knows',
  why: 'The word is kept in the record as it stands, but nothing is reckoned from it, and the drawing does not show it.',
  mend: 'Take one of the terms offered, or put the word in a remark after `;`.',
  source: 'the lists of terms',
  flagged: [{ text: 'strata\n  0 - 3.8 clay, [[browm]]', fixed: 'strata\n  0 - 3.8 clay, brown' }],
  silent: [
    { text: 'strata\n  0 - 3.8 slty cl brn stf sm gvl' },
    { text: 'strata\n  0 - 3.8 clay ; browm as the crew says' },
  ],
  check: ofProblem('unknown-term', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" is not a term known here; it is kept as written', written)}${didYouMean(meant)}`,
  }),
};
