import * as l10n from '@vscode/l10n';
import type { Depth, Test, WaterLevel } from '../../model/log.ts';
import { limitText } from '../limit-text.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** The level before the pump was started: the reading at 0. */
const firstLevel = ({ phases }: Test): Depth | null => {
  const reading = phases.find(({ kind }) => kind === 'pumping')?.readings[0];
  return reading?.elapsed?.value === 0 ? reading.level : null;
};

function reportOf({ level }: WaterLevel, first: Depth, context: RuleContext): Report | null {
  const most = context.limits['static-first-reading-most'];
  const { units } = context.log;
  if (!most || level?.value == null || first.value === null) return null;
  const apart = Math.abs(level.value - first.value);
  if (apart <= most.value + 1e-9) return null;
  return {
    span: first.span,
    doubts: [first, level],
    message: l10n.t(
      'the test begins at {0}, but the level of that day is {1}, {2} apart, over {3}; one may be from the top of the casing (toc), or the well had not recovered; say which',
      depthText(first.value, units),
      depthText(level.value, units),
      lengthText(apart, units),
      limitText(context, 'static-first-reading-most'),
    ),
    related: [{ span: level.span, message: l10n.t('{0} on the same day', depthText(level.value, units)) }],
    limit: 'static-first-reading-most',
  };
}

/** A static level and the first reading of a test on the same day that disagree. */
export const rule: Rule = {
  id: 'static-against-first-reading',
  severity: 'warning',
  title: 'A static level that disagrees with the first reading of the test',
  why: 'All drawdown is counted from the level before pumping. Two such levels on one day are often one from the ground and one from the top of the casing.',
  mend: 'Mark the datum (`toc` or `bgs`), or correct one of the levels.',
  source: 'common practice, no source',
  crew: 'From where was each of the two levels measured, and when?',
  flagged: [
    {
      text: 'water\n  level 5.2 2026-05-07\ntest pump 40 L/min, 2026-05-07 08:00\n  0 [[5.65]]\n  1 6.14',
      fixed: 'water\n  level 5.2 2026-05-07\ntest pump 40 L/min, 2026-05-07 08:00\n  0 5.65?\n  1 6.14',
    },
  ],
  silent: [
    { text: 'water\n  level 5.2 2026-05-07\ntest pump 40 L/min, 2026-05-07 08:00\n  0 5.2\n  1 6.14' },
    { text: 'water\n  level 5.2 2026-05-06\ntest pump 40 L/min, 2026-05-07 08:00\n  0 5.9\n  1 6.14' },
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\nwater\n  level 5.2 2026-05-07\ntest pump 40 L/min, toc, 2026-05-07 08:00\n  0 5.65\n  1 6.14',
    },
  ],
  check: function* (context) {
    for (const test of context.log.tests) {
      const first = firstLevel(test);
      const day = test.start?.from?.date ?? null;
      if (!first || day === null) continue;
      for (const level of context.log.water.levels.filter(({ date }) => date?.date === day)) {
        const report = reportOf(level, first, context);
        if (report) yield report;
      }
    }
  },
};
