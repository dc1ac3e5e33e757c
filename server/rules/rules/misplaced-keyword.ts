import { ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const messageOf = ({ written, facts }: ProblemOnLine): string =>
  facts.sections
    ? `${written} belongs under ${facts.sections.replaceAll(', ', ' or ')}, and none is open above it; move the line, or add what it hangs on`
    : `${written} opens a section only before a depth, or alone on its line; put what follows on the next line`;

/** A keyword where nothing is open that it could hang on. */
export const rule: Rule = {
  id: 'misplaced-keyword',
  severity: 'error',
  title: 'A keyword out of its place',
  why: 'What the line says cannot be given to a string or a section, so it is not read.',
  mend: 'Move the line below the `casing` (or the section) that it belongs to.',
  source: 'the notation',
  flagged: [{ text: '[[shoe]] 7.2' }, { text: '[[rate]] 60 L/min' }],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
    { text: 'test pump 40 L/min\n  0 5.2\n  rate 60 L/min' },
  ],
  check: ofProblem('misplaced-keyword', {
    message: (problem) => messageOf(problem),
  }),
};
