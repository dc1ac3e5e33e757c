import * as l10n from '@vscode/l10n';
import { didYouMean } from '../messages.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A word alone on its line that opens no known section. */
export const rule: Rule = {
  id: 'unknown-section',
  severity: 'warning',
  title: 'A section that is not known',
  why: 'Its lines are kept in the file but not read.',
  mend: 'Correct the word, or put its lines in remarks.',
  source: 'the notation',
  unfixed: 'The lines below would pass to the section above, where they would mean something else.',
  flagged: [{ text: '[[geophysics]]\n  0 - 12 gamma' }],
  silent: [{ text: 'strata\n  0 - 12 clay' }],
  check: ofProblem('unknown-section', {
    message: ({ written, meant }) =>
      `${l10n.t('"{0}" opens a section that is not known, and its lines are not read', written)}${didYouMean(meant)}`,
  }),
};
