import * as l10n from '@vscode/l10n';
import type { PipeString } from '../../model/log.ts';
import { anotherCentralizer } from '../another-centralizer.ts';
import { bottomOf } from '../columns.ts';
import { limitText } from '../limit-text.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isDriven, kindText, lengthAsSet } from '../strings.ts';

/** Depth of the lowest centralizer in metres; null where there is none, or one whose depth is not known. */
function lowestOf({ centralizers }: PipeString): number | null {
  const depths = centralizers?.positions.map(({ value }) => value) ?? [];
  return depths.length === 0 || depths.includes(null) ? null : Math.max(...depths.map(Number));
}

const isShort = (string: PipeString, { limits }: RuleContext): boolean =>
  (lengthAsSet(string) ?? 0) < (limits['centralizer-string-least']?.value ?? 0);

function reportOf(string: PipeString, lowest: number, foot: number, context: RuleContext): Report {
  const { units } = context.log;
  return {
    span: string.centralizers?.positions.at(-1)?.span ?? string.span,
    doubts: [string.centralizers?.positions.at(-1), string.interval.bottom],
    fixes: () => anotherCentralizer(string),
    message: l10n.t(
      'the lowest centralizer is at {0}, {1} above the foot of the {2} at {3}; one within {4} of the shoe holds the foot in the middle of the grout',
      depthText(lowest, units),
      lengthText(foot - lowest, units),
      kindText(string),
      depthText(foot, units),
      limitText(context, 'centralizer-shoe-most'),
    ),
    related: [
      {
        span: string.interval.bottom?.span ?? string.span,
        message: l10n.t('the foot, at {0}', depthText(foot, units)),
      },
    ],
    limit: 'centralizer-shoe-most',
  };
}

/** Centralizers of which none stands near the shoe. */
export const rule: Rule = {
  id: 'centralizer-none-near-shoe',
  severity: 'warning',
  title: 'No centralizer near the shoe',
  why: 'The seal begins at the shoe. Casing that leans there lets water past at the one place that matters most.',
  mend: 'Log the lowest centralizer, or note that none was fitted there.',
  source: 'common practice, no source',
  crew: 'At what depth is the lowest centralizer?',
  flagged: [
    {
      text: 'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  centralizers 6 15 25 [[34]]',
      fixed: 'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  centralizers 6 15 25 34 ?',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  centralizers 6 15 25 38' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  centralizers 1.5' },
    { text: 'casing +0.45 - 40 steel 168.3 x 6.4 driven\n  shoe 40\n  centralizers 6' },
  ],
  check: function* (context) {
    const most = context.limits['centralizer-shoe-most'];
    for (const string of context.log.strings) {
      const foot = bottomOf(string);
      const lowest = lowestOf(string);
      if (!most || foot === null || lowest === null || isDriven(string, context.log) || isShort(string, context))
        continue;
      if (foot - lowest > most.value + 1e-9) yield reportOf(string, lowest, foot, context);
    }
  },
};
