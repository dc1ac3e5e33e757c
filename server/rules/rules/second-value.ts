import * as l10n from '@vscode/l10n';
import { meantOrRemark, ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const messageOf = ({ written, facts: { doc } }: ProblemOnLine): string =>
  doc
    ? l10n.t(
        '"{0}" is a second value for "{1}"; the first counts, and this one is left out; give it its unit or its label, or remove it',
        written,
        l10n.t(doc),
      )
    : l10n.t(
        '"{0}" is a second value; the first counts, and this one is left out; give it its unit or its label, or remove it',
        written,
      );

/** Two values where one fits. */
export const rule: Rule = {
  id: 'second-value',
  severity: 'error',
  title: 'A second value where one fits',
  why: 'The first one counts; the second is left out, and may have been meant for something else.',
  mend: 'Give the second value its unit or its label, or remove it.',
  source: 'the notation',
  flagged: [{ text: 'hole\n  0 - 7.2 254 [[152]]', fixed: 'hole\n  0 - 7.2 254  ; 152' }],
  silent: [{ text: 'hole\n  0 - 7.2 254' }],
  check: ofProblem('second-value', {
    message: messageOf,
    fixes: meantOrRemark,
  }),
};
