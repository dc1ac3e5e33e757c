import * as l10n from '@vscode/l10n';
import type { Fill, Interval, PipeString } from '../../model/log.ts';
import { sameDepth } from '../columns.ts';
import { intervalText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, kindText } from '../strings.ts';

const openIntervals = (string: PipeString): Interval[] => [
  ...string.screens.map((screen) => screen.interval),
  ...string.perforated,
];

function reportOf(open: Interval, fill: Fill, { log: { units } }: RuleContext): Report | null {
  const top = Math.max(open.top?.value ?? Number.POSITIVE_INFINITY, fill.interval?.top?.value ?? 0);
  const bottom = Math.min(open.bottom?.value ?? Number.NEGATIVE_INFINITY, fill.interval?.bottom?.value ?? -1);
  if (!fill.interval || bottom <= top + sameDepth) return null;
  return {
    span: fill.interval.span,
    doubts: [fill.interval.top, fill.interval.bottom, open.top, open.bottom],
    message: l10n.t(
      '{0} {1} stands against the screen {2} at {3}: sealed slots give no water; correct one of the depths',
      kindText(fill),
      intervalText(fill.interval, units),
      intervalText(open, units),
      stretchText(top, bottom, units),
    ),
    related: [{ span: open.span, message: l10n.t('the screen') }],
  };
}

/** Grout or seal logged against an open stretch of its string. */
export const rule: Rule = {
  id: 'screen-across-seal',
  severity: 'error',
  title: 'A seal that stands against a screen',
  why: 'Slots that are sealed give no water, and the seal that was meant to part two aquifers may not reach its place.',
  mend: 'Correct the depth of the screen or of the seal.',
  source: 'geometry',
  crew: 'Where do the screen and the seal begin and end?',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 31 - 36 20/40 sand\n  seal [[28 - 31]] bentonite chips',
      fixed:
        'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 31 - 36 20/40 sand\n  seal 28? - 31 bentonite chips',
    },
  ],
  silent: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  screen 30 - 36 pvc 114.3, slot 0.5\n  pack 29 - 36 20/40 sand\n  seal 27 - 29 bentonite chips',
    },
  ],
  check: function* (context) {
    for (const string of context.log.strings)
      for (const open of openIntervals(string))
        for (const fill of string.fills.filter(isSeal)) {
          const report = reportOf(open, fill, context);
          if (report) yield report;
        }
  },
};
