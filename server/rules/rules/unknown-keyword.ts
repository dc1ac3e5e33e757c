import * as l10n from '@vscode/l10n';
import { writeBefore } from '../fixes.ts';
import { didYouMean } from '../messages.ts';
import { fixesOfMeant, ofProblem } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

/** A line that begins with a word that is no keyword. */
export const rule: Rule = {
  id: 'unknown-keyword',
  severity: 'error',
  title: 'A line whose first word is no keyword',
  why: 'The line is not read, and nothing of it is in the record.',
  mend: 'Correct the keyword; or begin the line with `note`, `;` or `#`.',
  source: 'the notation',
  flagged: [{ text: '[[zebra]] 12 steel', fixed: 'note  zebra 12 steel' }],
  silent: [{ text: 'note zebra 12 steel' }, { text: '# zebra 12 steel' }],
  check: ofProblem('unknown-keyword', {
    message: ({ written, meant, facts }) =>
      facts.head
        ? l10n.t(
            '"{0}" has its place on the line that begins with {1}, so this line is not read; move what it says up there',
            written,
            facts.head,
          )
        : `${l10n.t('"{0}" is no keyword, so this line is not read', written)}${didYouMean(meant)}`,
    fixes: (problem, text) => [
      ...fixesOfMeant(problem),
      {
        ...writeBefore(l10n.t('Keep the line as a note'), problem.line, text, 'note  '),
        preferred: problem.meant.length === 0,
      },
    ],
  }),
};
