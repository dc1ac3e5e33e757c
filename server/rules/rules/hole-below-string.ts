import * as l10n from '@vscode/l10n';
import type { Fill, PipeString, WellLog } from '../../model/log.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { bottomOf } from '../columns.ts';
import { limitText } from '../limit-text.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

const footOf = (fill: Fill): number => fill.interval?.bottom?.value ?? fill.depth?.value ?? 0;

const isOpen = ({ screens, perforated }: PipeString): boolean => screens.length > 0 || perforated.length > 0;

/** The string that goes deepest, where it lets water in through its wall: below it nothing need stand open. */
function screenedFoot({ strings }: WellLog): PipeString | null {
  const standing = strings.filter((each) => isPermanent(each) && bottomOf(each) !== null);
  const [deepest] = [...standing].sort((a, b) => (bottomOf(b) ?? 0) - (bottomOf(a) ?? 0));
  return deepest && isOpen(deepest) ? deepest : null;
}

const isFilledBelow = ({ strings, abandonments }: WellLog, foot: number): boolean =>
  [...strings.flatMap(({ fills }) => fills), ...abandonments.flatMap(({ fills }) => fills)].some(
    (fill) => footOf(fill) > foot + 1e-3,
  );

const hasRemark = ({ hole }: WellLog, foot: number): boolean =>
  hole.some((each) => each.remark !== null && (bottomOf(each) ?? 0) > foot);

function reportOf(string: PipeString, foot: number, total: number, context: RuleContext): Report {
  const { log } = context;
  const deepest = log.hole.find((each) => bottomOf(each) === total)?.interval.bottom ?? null;
  return {
    span: string.interval.bottom?.span ?? string.interval.span,
    doubts: [string.interval.bottom, deepest],
    message: l10n.t(
      'the {0} with its screen ends at {1}, and the hole goes {2} deeper, more than {3}, with no word of what stands there; log the backfill, or correct a depth',
      kindText(string),
      depthText(foot, log.units),
      lengthText(total - foot, log.units),
      limitText(context, 'foot-difference-most'),
    ),
    related: deepest
      ? [{ span: deepest.span, message: l10n.t('the hole ends here, at {0}', depthText(total, log.units)) }]
      : [],
    limit: 'foot-difference-most',
  };
}

/** A hole that goes on below a screened string with no word of backfill. */
export const rule: Rule = {
  id: 'hole-below-string',
  severity: 'information',
  title: 'A hole deeper than its screened string, with no word of backfill',
  why: 'A string that was set into a deeper hole stands on something: backfill, cuttings or a slip in a depth.',
  mend: 'Log what stands below the string (`pack`, `plug`), say so in a remark on the hole, or correct a depth.',
  source: 'common practice, no source',
  crew: 'What stands in the hole below the string?',
  flagged: [
    {
      text: 'hole\n  0 - 40 200\ncasing +0.5 - [[36]] pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5',
      fixed: 'hole\n  0 - 40 200\ncasing +0.5 - 36? pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 36.2 200\ncasing +0.5 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5' },
    {
      text: 'hole\n  0 - 40 200\ncasing +0.5 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 28 - 40 20/40 sand',
    },
    { text: 'hole\n  0 - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4' },
    {
      text: 'hole\n  0 - 40 200 ; caved below 36\ncasing +0.5 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5',
    },
  ],
  check: (context) => {
    const { log, limits } = context;
    const string = screenedFoot(log);
    const [foot, total, most] = [string && bottomOf(string), log.totalDepth, limits['foot-difference-most']?.value];
    if (!string || foot === null || total === null || most === undefined || total - foot <= most + 1e-9) return [];
    return isFilledBelow(log, foot) || hasRemark(log, foot) ? [] : [reportOf(string, foot, total, context)];
  },
};
