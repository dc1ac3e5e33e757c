import * as l10n from '@vscode/l10n';
import { ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const messageOf = ({ written, facts }: ProblemOnLine): string => {
  if (facts.wanted === 'sign')
    return l10n.t('"{0}": a depth has no minus; write + for above ground, or leave the minus out', written);
  return facts.section
    ? l10n.t(
        '"{0}" begins with a depth, but {1} has no lines of its own; begin it with a keyword, or move it below its section',
        written,
        facts.section,
      )
    : l10n.t('one depth belongs here, not the interval {0}', written);
};

/** Depths where a line takes none, or an interval where it takes one depth. */
export const rule: Rule = {
  id: 'unexpected-depth',
  severity: 'error',
  title: 'Depths that do not belong here',
  why: 'The line cannot be given its meaning with these depths.',
  mend: 'Move the line below the section that it belongs to, or write a single depth.',
  source: 'the notation',
  flagged: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe [[7 - 7.2]]' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  [[0 - 3 clay]]' },
    { text: 'casing [[-0.45 - 7.2]] steel 168.3 x 6.4', fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4' },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' }],
  check: ofProblem('unexpected-depth', {
    message: (problem) => messageOf(problem),
  }),
};
