import { spanAt } from '../../../grammar/span.ts';
import { overwrite } from '../fixes.ts';
import { ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A label with no value after it. */
export const rule: Rule = {
  id: 'missing-value',
  severity: 'error',
  title: 'A label without its value',
  why: 'The line says that something is known and does not say what.',
  mend: 'Write the value, or `?` where nobody knows it.',
  source: 'the notation',
  crew: 'What was it?',
  flagged: [{ text: 'test pump 40 L/min, [[intake]]', fixed: 'test pump 40 L/min, intake ?' }],
  silent: [{ text: 'test pump 40 L/min, intake ?' }],
  check: ofProblem('missing-value', {
    message: ({ written, facts }) =>
      `"${written}" needs its value after it${facts.doc ? ` (${facts.doc})` : ''}; write it, or ? to ask the crew`,

    fixes: (problem) => [overwrite(spanAt(problem.line, problem), `${problem.written} ?`, { preferred: true })],
  }),
};
