import * as l10n from '@vscode/l10n';
import { overwrite } from '../fixes.ts';
import { didYouMean, shortened } from '../messages.ts';
import { nearNames } from '../near-names.ts';
import type { Rule } from '../rule.ts';

/** An `# allow` of a rule that does not exist. */
export const rule: Rule = {
  id: 'allow-unknown-rule',
  severity: 'warning',
  title: 'An allow of a rule that does not exist',
  why: 'It silences nothing, and whoever wrote it believes that it does.',
  mend: 'Correct the name of the rule; every finding shows the name of its rule.',
  source: 'the catalogue of rules',
  flagged: [
    {
      text: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow [[intervall-gap]]: no returns',
      fixed: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow interval-gap: no returns',
    },
  ],
  silent: [{ text: 'strata\n  0 - 3.8 clay\n  4.1 - 6.1 sand # allow interval-gap: no returns' }],
  check: () => [],
  checkAllows: (uses, ruleIds) =>
    uses
      .filter(({ known }) => !known)
      .map(({ span, id }) => {
        const near = nearNames(id, ruleIds);
        return {
          span,
          message: `${l10n.t('there is no rule {0}', shortened(id))}${didYouMean(near)}`,
          fixes: () =>
            near.map((name, index) => overwrite(span, name, { preferred: index === 0, safe: near.length === 1 })),
        };
      }),
};
