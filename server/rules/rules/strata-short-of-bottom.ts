import * as l10n from '@vscode/l10n';
import type { Stratum } from '../../model/log.ts';
import { bottomOf } from '../columns.ts';
import { fix, lineAfter } from '../fixes.ts';
import { depthText, lengthText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** The entry that reaches deepest; null where the base of the last is not known, so that nobody can tell. */
function deepestOf(strata: readonly Stratum[]): Stratum | null {
  const last = strata.at(-1);
  if (!last || bottomOf(last) === null) return null;
  let deepest = last;
  for (const each of strata) if ((bottomOf(each) ?? 0) > (bottomOf(deepest) ?? 0)) deepest = each;
  return deepest;
}

function reportOf({ tree, log }: RuleContext, last: Stratum, total: number): Report {
  const foot = bottomOf(last) ?? 0;
  const { units } = log;
  return {
    span: last.interval.bottom?.span ?? last.interval.span,
    message: l10n.t(
      'the strata end at {0}, {1} above the bottom of the hole at {2}; log {3}, with ? where nobody saw the ground',
      depthText(foot, units),
      lengthText(total - foot, units),
      depthText(total, units),
      stretchText(foot, total, units),
    ),
    limit: 'foot-difference-most',
    fixes: () => [
      fix(
        l10n.t('Add a line with ? down to the bottom of the hole'),
        [lineAfter(last.line, tree.lines[last.line]?.text ?? '', '- td  ?')],
        { preferred: true },
      ),
    ],
  };
}

/** Strata that stop well above the bottom of the hole. */
export const rule: Rule = {
  id: 'strata-short-of-bottom',
  severity: 'warning',
  title: 'Strata that are not logged down to the bottom of the hole',
  why: 'What the well ends in decides what water it can hold; a log that stops short leaves the last ground untold, or has a slip in a depth.',
  mend: 'Log the ground down to the bottom, with `?` where nobody saw it, or correct the depth of the hole.',
  source: 'common practice, no source',
  crew: 'What ground was met down to the bottom?',
  flagged: [
    {
      text: 'hole\n  0 - 61 152\nstrata\n  0 - [[44.2]] limestone',
      fixed: 'hole\n  0 - 61 152\nstrata\n  0 - 44.2 limestone\n  - td  ?',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\nstrata\n  0 - 61 limestone' },
    { text: 'hole\n  0 - 61 152\nstrata\n  0 - 60.8 limestone' },
    { text: 'hole\n  0 - 61 152\nstrata\n  0 - ? limestone' },
    { text: 'hole\n  0 - 61 152' },
  ],
  check: (context) => {
    const { log, limits } = context;
    const last = deepestOf(log.strata);
    const most = limits['foot-difference-most']?.value;
    if (!last || log.totalDepth === null || most === undefined) return [];
    return log.totalDepth - (bottomOf(last) ?? 0) > most ? [reportOf(context, last, log.totalDepth)] : [];
  },
};
