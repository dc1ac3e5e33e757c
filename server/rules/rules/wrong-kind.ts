import { meantOrRemark, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const words: Readonly<Record<string, string>> = {
  share: 'percentage',
  count: 'count of bags',
  'open-area': 'open area',
};

const wordFor = (dimension: string): string => words[dimension] ?? dimension;

/** A value whose unit does not fit its place. */
export const rule: Rule = {
  id: 'wrong-kind',
  severity: 'error',
  title: 'A value whose unit does not fit',
  why: 'A value says what it is by its unit; here nothing of that kind belongs.',
  mend: 'Correct the unit, or move the value to the line that it belongs to.',
  source: 'the notation',
  flagged: [{ text: 'hole\n  0 - 7.2 254 [[40 L/min]]', fixed: 'hole\n  0 - 7.2 254  ; 40 L/min' }],
  silent: [{ text: 'hole\n  0 - 7.2 254 mm' }],
  check: ofProblem('wrong-kind', {
    message: ({ written, facts }) =>
      `${written} is a ${wordFor(facts.dimension ?? '')}, and this line takes none; correct the unit, or move it to where it belongs`,
    fixes: meantOrRemark,
  }),
};
