import * as l10n from '@vscode/l10n';
import type { Depth, Test } from '../../model/log.ts';
import { depthText } from '../messages.ts';
import type { Rule } from '../rule.ts';

/** The deepest level while the pump ran. */
function deepestOf({ phases }: Test): Depth | null {
  const levels = phases
    .filter(({ kind }) => kind === 'pumping')
    .flatMap(({ readings }) => readings.map(({ level }) => level));
  return levels.reduce((deepest, level) => ((level?.value ?? -1e9) > (deepest?.value ?? -1e9) ? level : deepest), null);
}

/** A pump whose intake stood above the water that it pumped. */
export const rule: Rule = {
  id: 'intake-above-level',
  severity: 'warning',
  title: 'A pump intake above the pumping level',
  why: 'A pump whose intake is out of the water draws air; it can neither have given the rate nor have drawn the level down to there.',
  mend: 'Correct the depth of the intake, or the readings.',
  source: 'physics',
  crew: 'How deep was the intake, and how far did the level go down?',
  flagged: [
    {
      text: 'test pump 40 L/min, intake [[10]]\n  0 5.2\n  60 11.9',
      fixed: 'test pump 40 L/min, intake 10?\n  0 5.2\n  60 11.9',
    },
  ],
  silent: [
    { text: 'test pump 40 L/min, intake 50\n  0 5.2\n  60 11.9' },
    { text: 'test pump 40 L/min\n  0 5.2\n  60 11.9' },
  ],
  check: function* ({ log }) {
    for (const test of log.tests) {
      const level = deepestOf(test);
      if (test.intake?.value == null || level?.value == null || test.intake.value >= level.value) continue;
      yield {
        span: test.intake.span,
        doubts: [test.intake, level],
        message: l10n.t(
          'the intake is at {0}, but the level was pumped down to {1}, below it; correct the intake or the readings',
          depthText(test.intake.value, log.units),
          depthText(level.value, log.units),
        ),
        related: [
          {
            span: level.span,
            message: l10n.t('the deepest level while pumping, {0}', depthText(level.value, log.units)),
          },
        ],
      };
    }
  },
};
