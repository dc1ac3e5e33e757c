import * as l10n from '@vscode/l10n';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A line longer than any log has. */
export const rule: Rule = {
  id: 'line-too-long',
  severity: 'error',
  title: 'A line that is too long to be read',
  why: 'A line this long is not a log but something pasted or damaged; it is left unread, so that the rest stays quick.',
  mend: 'Break it into lines, or remove it.',
  source: 'the notation',
  unfixed: 'Where a line of such a length is to be broken cannot be told.',
  flagged: [{ text: `[[${'x'.repeat(10_000)}]]x` }],
  silent: [{ text: 'note short' }],
  check: ofProblem('line-too-long', {
    message: ({ facts }) =>
      l10n.t('this line has {0} characters and is not read; break it into lines, or remove it', facts.length ?? '?'),
  }),
};
