import * as l10n from '@vscode/l10n';
import type { Depth } from '../../model/log.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const inside = (level: string): string =>
  l10n.t(
    'the water stands {0}, above ground inside the casing, and no flowing line says how the flow is held; log flowing with its rate, shut-in and control, or correct the sign',
    level,
  );

const overTop = (level: string): string =>
  l10n.t(
    'the water stands {0}, above ground and over the top of the casing, and no flowing line says how the flow is held; log flowing with its rate, shut-in and control, or correct the sign',
    level,
  );

function reportOf(level: Depth, depth: number, { log, record }: RuleContext): Report {
  const top = record.topOfCasing;
  const words = top !== null && -depth <= top ? inside : overTop;
  return {
    span: level.span,
    doubts: [level],
    message: words(depthText(depth, log.units)),
  };
}

/** A water level above ground, in a log that says nothing of a flowing well. */
export const rule: Rule = {
  id: 'level-above-ground-without-control',
  severity: 'warning',
  title: 'A level above ground with no flowing-well control',
  why: 'A well whose water stands above ground flows if anything opens it. Uncontrolled flow washes out the seal and the ground round it, and can drain an aquifer.',
  mend: 'Log `flowing` with the rate, the shut-in pressure and how the flow is held, or correct the sign of the level. Control of a flowing well is work for licensed hands, under the local code.',
  source: 'common practice, no source',
  crew: 'Does the well flow, and how is the flow held?',
  flagged: [{ text: 'water\n  level [[+1.2]] 2026-05-07', fixed: 'water\n  level +1.2? 2026-05-07' }],
  silent: [
    { text: 'water\n  level +1.2 2026-05-07\n  flowing 35 L/min, shut-in 42 kPa, valve, no leak' },
    { text: 'water\n  level 5.2' },
  ],
  check: (context) =>
    context.log.water.flowing.length > 0
      ? []
      : context.log.water.levels.flatMap(({ level }) =>
          level && level.value !== null && level.value < 0 ? [reportOf(level, level.value, context)] : [],
        ),
};
