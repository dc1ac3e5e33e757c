import * as l10n from '@vscode/l10n';
import { meantOrRemark, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** `a/b` that is neither a fraction nor a grading. */
export const rule: Rule = {
  id: 'bad-ratio',
  severity: 'error',
  title: 'Two numbers with a stroke that mean nothing here',
  why: 'A fraction of an inch has an odd number above 2, 4, 8, 16, 32 or 64. Anything else is a grading, which belongs to a filter pack.',
  mend: 'Write the fraction in its lowest terms, or as a decimal.',
  source: 'the notation',
  flagged: [{ text: 'units ft in\nhole\n  0 - 40 10 [[20/40]]', fixed: 'units ft in\nhole\n  0 - 40 10  ; 20/40' }],
  silent: [
    { text: 'units ft in\nhole\n  0 - 40 9 7/8' },
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 20/40 sand' },
  ],
  check: ofProblem('bad-ratio', {
    message: ({ written }) =>
      l10n.t(
        '"{0}" is neither a fraction of an inch (such as 3/8) nor, here, a grading of sand; write it as a decimal',
        written,
      ),
    fixes: meantOrRemark,
  }),
};
