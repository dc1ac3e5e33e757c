import { meantOrRemark, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

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
    message: ({ written, facts }) =>
      `"${written}" is a second value${facts.doc ? ` for "${facts.doc}"` : ''}; the first counts, and this one is left out; give it its unit or its label, or remove it`,
    fixes: meantOrRemark,
  }),
};
