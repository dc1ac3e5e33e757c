import * as l10n from '@vscode/l10n';
import type { DrilledInterval, Fill, Moment, PipeString } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import { askedText } from '../asked.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { factsOfFill } from '../facts.ts';
import { numberText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** Milliseconds of a moment that has both a date and a time; null where one is missing or doubtful. */
const clockOf = (moment: Moment | null | undefined): number | null =>
  moment?.date && moment.time && moment.valid && !moment.doubtful ? Date.parse(`${moment.date}T${moment.time}Z`) : null;

const endOf = ({ placed }: Fill): Moment | null => placed?.to ?? placed?.from ?? null;

/** The first drilling at or below the foot of the string that began after the grout was placed. */
function firstBelow(drilled: readonly DrilledInterval[], string: PipeString, placed: number): DrilledInterval | null {
  const foot = bottomOf(string);
  const isLater = (each: DrilledInterval) =>
    foot !== null && (topOf(each) ?? -1) >= foot - sameDepth && (clockOf(each.when?.from) ?? 0) >= placed;
  return drilled
    .filter(isLater)
    .reduce<DrilledInterval | null>(
      (first, each) => (first && (clockOf(first.when?.from) ?? 0) <= (clockOf(each.when?.from) ?? 0) ? first : each),
      null,
    );
}

function reportOf(
  string: PipeString,
  fill: Fill,
  drilled: readonly DrilledInterval[],
  context: RuleContext,
): Report | null {
  const least = limitGiven(context.limits, 'set-time-cement', factsOfFill(fill, string, context.log));
  const placed = clockOf(endOf(fill));
  const next = placed === null ? null : firstBelow(drilled, string, placed);
  const began = clockOf(next?.when?.from);
  if (!least || placed === null || began === null || !next || (began - placed) / 1000 >= least.value) return null;
  return {
    span: next.when?.span ?? next.span,
    doubts: [next.when?.from, endOf(fill)],
    message: l10n.t(
      'drilling went on {0} h after the cement was placed; {1} lets it set, so that the bit does not break the seal at the shoe; correct a time, or note the cement that sets faster',
      numberText((began - placed) / 3.6e6, 3),
      askedText(least),
    ),
    related: [{ span: fill.placed?.span ?? fill.span, message: l10n.t('the cement was placed then') }],
    limit: least.key,
  };
}

/** Drilling that went on below cement grout before it had set. */
export const rule: Rule = {
  id: 'drilled-on-too-soon',
  severity: 'warning',
  title: 'Drilling went on before the cement had set',
  why: 'The bit and the flush shake green cement loose from the casing, and the seal at the shoe is lost for good.',
  mend: 'Correct a time. Where a cement was used that sets faster, note it and allow the finding with that reason.',
  source: 'the pack’s limit; in `general` Minnesota 4725 and Michigan R 325',
  crew: 'When was the cement placed, and when did drilling go on?',
  flagged: [
    {
      text: 'rules michigan-r325\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 cement-bentonite, 0.29 m3, 2026-05-05 09:30\ndrilling\n  7.2 - 13.2 18 min, [[2026-05-06 15:00 - 15:18]]',
      fixed:
        'rules michigan-r325\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 cement-bentonite, 0.29 m3, 2026-05-05 09:30\ndrilling\n  7.2 - 13.2 18 min, 2026-05-06 15:00? - 15:18',
    },
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, 2026-05-05 09:30\ndrilling\n  7.2 - 13.2 18 min, [[2026-05-05 15:00 - 15:18]]',
    },
  ],
  silent: [
    {
      text: 'rules minnesota-4725\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 rapid-setting cement, 0.29 m3, 2026-05-05 09:30\ndrilling\n  7.2 - 13.2 18 min, 2026-05-06 06:00 - 06:18',
    },
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, 2026-05-05 09:30\ndrilling\n  7.2 - 13.2 18 min, 2026-05-06 10:00 - 10:18',
    },
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 bentonite slurry, 0.29 m3, 2026-05-05 09:30\ndrilling\n  7.2 - 13.2 18 min, 2026-05-05 15:00 - 15:18',
    },
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, 2026-05-05\ndrilling\n  7.2 - 13.2 18 min, 2026-05-05 15:00 - 15:18',
    },
  ],
  check: function* (context) {
    const drilled = context.log.drilling.flatMap((each) => each.intervals).filter(({ when }) => when !== null);
    if (drilled.length === 0) return;
    for (const string of context.log.strings)
      for (const fill of string.fills.filter(({ fillClass }) => fillClass === 'cement' || fillClass === 'concrete')) {
        const report = reportOf(string, fill, drilled, context);
        if (report) yield report;
      }
  },
};
