import * as l10n from '@vscode/l10n';
import type { PipeString, WellLog } from '../../model/log.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { topOf } from '../columns.ts';
import { limitText } from '../limit-text.ts';
import { lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** Casing that begins no deeper than this, in metres, ends in a pit or a vault. Common practice, no source. */
const deepestPit = 3;

/** The string that stands at the surface when the work is done: the innermost casing that reaches it, or a pit below it. */
const atSurface = ({ log }: RuleContext): PipeString | null =>
  log.strings
    .filter(
      (each) => each.kind === 'casing' && isPermanent(each) && (topOf(each) ?? Number.POSITIVE_INFINITY) <= deepestPit,
    )
    .reduce<PipeString | null>(
      (inner, each) =>
        inner && (inner.size.outsideDiameter ?? 0) <= (each.size.outsideDiameter ?? Number.POSITIVE_INFINITY)
          ? inner
          : each,
      null,
    );

/** Wells sealed for good are cut off, and monitoring wells often end in a box level with the ground. */
const isLeftLow = ({ abandonments, uses }: WellLog): boolean =>
  abandonments.length > 0 || uses.some((use) => 'id' in use && use.id === 'monitoring');

const belowGround = (height: string, asked: string): string =>
  l10n.t(
    'the casing ends {0} below ground; at least {1} keeps surface water and flood out of the well; correct the height, or extend the casing',
    height,
    asked,
  );

const aboveGround: typeof belowGround = (height, asked) =>
  l10n.t(
    'the casing stands {0} above ground; at least {1} keeps surface water and flood out of the well; correct the height, or extend the casing',
    height,
    asked,
  );

function reportOf(string: PipeString, height: number, context: RuleContext): Report {
  const cut = string.cuts.at(-1)?.to;
  const top = cut ?? string.interval.top;
  const { units } = context.log;
  return {
    span: top?.span ?? string.span,
    doubts: [top],
    message: (height < 0 ? belowGround : aboveGround)(lengthText(height, units), limitText(context, 'stickup-least')),
    limit: 'stickup-least',
  };
}

/** Casing that ends too low above the ground. */
export const rule: Rule = {
  id: 'stickup-low',
  severity: 'warning',
  title: 'Casing that stands too low above ground',
  why: 'Water that ponds round the well runs in over the top of a low casing.',
  mend: 'Correct the height as it was left, or note why it is low (a vault, a pit) and allow it with the reason.',
  source: 'the pack’s limit; in `general` Texas 16 TAC 76, Arizona and US Army TM 5-813-1',
  crew: 'How high does the casing stand now?',
  flagged: [
    {
      text: 'casing [[+0.1]] - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
      fixed: 'casing +0.1? - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
    },
    { text: 'casing +0.9 - 12 steel 168.3 x 6.4\n  shoe 12\n  cut +0.9 to [[+0.2]]' },
    { text: 'casing [[1.2]] - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
  ],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
    { text: 'casing +0.1 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\nabandonment 2026-06-01\n  0 - 7.2 neat cement' },
    { text: 'use monitoring\ncasing 0 - 4.6 pvc 60.3 sch 40' },
    { text: 'liner 24.4 - 61 pvc 114.3 sdr 26' },
  ],
  check: (context) => {
    const string = atSurface(context);
    const least = context.limits['stickup-least'];
    const height = context.record.topOfCasing;
    if (!string || !least || height === null || isLeftLow(context.log)) return [];
    return height < least.value - 1e-9 ? [reportOf(string, height, context)] : [];
  },
};
