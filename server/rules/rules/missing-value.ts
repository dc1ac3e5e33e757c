import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { overwrite } from '../fixes.ts';
import { ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const messageOf = ({ written, facts: { doc } }: ProblemOnLine): string =>
  doc
    ? l10n.t('"{0}" needs its value after it ({1}); write it, or ? to ask the crew', written, l10n.t(doc))
    : l10n.t('"{0}" needs its value after it; write it, or ? to ask the crew', written);

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
    message: messageOf,

    fixes: (problem) => [overwrite(spanAt(problem.line, problem), `${problem.written} ?`, { preferred: true })],
  }),
};
