import * as l10n from '@vscode/l10n';
import { distance } from '../../../grammar/near.ts';
import { lookup } from '../../../grammar/terms/index.ts';
import { didYouMean } from '../messages.ts';
import { ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const isMaterial = (name: string): boolean => lookup(name)[0]?.list === 'material';

/** True where one letter makes a material of the word: a layer may have been lost. */
const isMaterialMisspelt = ({ written, meant }: ProblemOnLine): boolean =>
  meant.some((name) => isMaterial(name) && distance(written.toLowerCase(), name) <= 1);

/** A word that no list of the trade knows. */
export const rule: Rule = {
  id: 'unknown-term',
  severity: 'hint',
  title: 'A word that no list knows',
  why: 'The word is kept in the record as it stands, but nothing is reckoned from it, and the drawing does not show it.',
  mend: 'Take one of the terms offered, or put the word in a remark after `;`.',
  source: 'the lists of terms',
  flagged: [
    { text: 'strata\n  0 - 3.8 clay, [[browm]]', fixed: 'strata\n  0 - 3.8 clay, brown' },
    { text: 'strata\n  0 - 3.8 [[Limstone]], grey', fixed: 'strata\n  0 - 3.8 limestone, grey' },
  ],
  silent: [
    { text: 'strata\n  0 - 3.8 slty cl brn stf sm gvl' },
    { text: 'strata\n  0 - 3.8 clay ; browm as the crew says' },
    { text: 'strata\n  0 - 3.8 Caly Formation' },
  ],
  check: ofProblem('unknown-term', {
    severity: (problem) => (isMaterialMisspelt(problem) ? 'information' : null),
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" is not a term known here; it is kept as written', written)}${didYouMean(meant)}`,
  }),
};
