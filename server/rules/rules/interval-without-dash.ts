import * as l10n from '@vscode/l10n';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** Two depths with no dash between them. */
export const rule: Rule = {
  id: 'interval-without-dash',
  severity: 'hint',
  title: 'An interval without its dash',
  why: 'Two bare numbers may be an interval, or a depth and something else.',
  mend: 'Put a dash between them.',
  source: 'the notation',
  flagged: [{ text: 'strata\n  [[0 3.8]] clay', fixed: 'strata\n  0 - 3.8 clay' }],
  silent: [{ text: 'strata\n  0 - 3.8 clay' }],
  check: ofProblem('interval-without-dash', {
    message: ({ written, meant }) =>
      l10n.t('"{0}" is read as the interval {1}; put a dash between the two depths', written, meant[0] ?? written),
    safe: true,
  }),
};
