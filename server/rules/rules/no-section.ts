import * as l10n from '@vscode/l10n';
import { writeBefore } from '../fixes.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A line of depths before any section is open. */
export const rule: Rule = {
  id: 'no-section',
  severity: 'error',
  title: 'Depths with no section above them',
  why: 'Nobody can tell whether the depths are of the hole, of the ground or of something else, so the line is not read.',
  mend: 'Put `strata`, `hole`, `water` or another section above the line.',
  source: 'the notation',
  flagged: [{ text: 'well KH-04\n[[0 - 3.8 clay]]', fixed: 'well KH-04\nstrata\n  0 - 3.8 clay' }],
  silent: [{ text: 'well KH-04\nstrata\n0 - 3.8 clay' }],
  check: ofProblem('no-section', {
    message: ({ written }) =>
      l10n.t(
        '"{0}" stands below no section, so it is not read; put hole, strata, water or another section above it',
        written,
      ),
    fixes: ({ line }, text) =>
      ['strata', 'hole', 'water'].map((section) => ({
        ...writeBefore(l10n.t('Put {0} above it', section), line, text, `${section}\n  `),
        preferred: false,
      })),
  }),
};
