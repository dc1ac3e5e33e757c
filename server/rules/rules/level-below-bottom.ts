import * as l10n from '@vscode/l10n';
import type { Depth } from '../../model/log.ts';
import { sameDepth } from '../columns.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const levelsOf = ({ log }: RuleContext): Depth[] =>
  [
    ...log.water.levels.map(({ level }) => level),
    ...log.tests.flatMap((test) => test.phases.flatMap((phase) => phase.readings.map(({ level }) => level))),
  ].filter((level) => level !== null);

const reportOf = (level: Depth, depth: number, total: number, { log: { units } }: RuleContext): Report => ({
  span: level.span,
  doubts: [level],
  message: l10n.t(
    'the water level is {0}, but the well is only {1} deep; correct the level, its unit or its datum (toc, bgs), or the depth of the hole',
    depthText(depth, units),
    depthText(total, units),
  ),
});

/** A water level deeper than the well. */
export const rule: Rule = {
  id: 'level-below-bottom',
  severity: 'error',
  title: 'A water level deeper than the well',
  why: 'Nobody can measure water below the bottom of the well: the level, its datum or its unit is wrong.',
  mend: 'Correct the level, its unit or its datum, or the depth of the hole.',
  source: 'geometry',
  crew: 'What was the level, and from where was it measured?',
  flagged: [
    { text: 'hole\n  0 - 61 152\nwater\n  level [[62]]', fixed: 'hole\n  0 - 61 152\nwater\n  level 62?' },
    { text: 'hole\n  0 - 61 152\ntest pump 40 L/min\n  0 5.2\n  1 [[119]]' },
  ],
  silent: [{ text: 'hole\n  0 - 61 152\nwater\n  level 5.2' }, { text: 'water\n  level 62' }],
  check: function* (context) {
    const total = context.log.totalDepth;
    if (total === null) return;
    for (const level of levelsOf(context))
      if (level.value !== null && level.value > total + sameDepth) yield reportOf(level, level.value, total, context);
  },
};
