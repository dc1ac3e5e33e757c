import * as l10n from '@vscode/l10n';
import type { Fill, Interval } from '../../model/log.ts';
import { sameDepth } from '../columns.ts';
import { moveDepth } from '../fixes.ts';
import { intervalText, stretchText } from '../messages.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

interface Stretch {
  readonly fill: Fill;
  readonly interval: Interval;
  readonly top: number;
  readonly bottom: number;
}

function stretchOf(fill: Fill): Stretch[] {
  const { interval } = fill;
  const top = interval?.top?.value ?? null;
  const bottom = interval?.bottom?.value ?? null;
  return interval && top !== null && bottom !== null && bottom > top ? [{ fill, interval, top, bottom }] : [];
}

function fixesOf(upper: Stretch, lower: Stretch): Fix[] {
  const begin = () => l10n.t('Begin the {0} where the {1} ends', kindText(lower.fill), kindText(upper.fill));
  const end = () => l10n.t('End the {0} where the {1} begins', kindText(upper.fill), kindText(lower.fill));
  return [
    ...(lower.bottom > upper.bottom
      ? moveDepth(begin, lower.fill.line, lower.interval.top, upper.interval.bottom, true)
      : []),
    ...(lower.top > upper.top ? moveDepth(end, upper.fill.line, upper.interval.bottom, lower.interval.top) : []),
  ];
}

function reportOf(upper: Stretch, lower: Stretch, { log: { units } }: RuleContext): Report {
  const later = upper.fill.line > lower.fill.line ? upper : lower;
  const earlier = later === upper ? lower : upper;
  return {
    span: later.interval.span,
    message: l10n.t(
      '{0} {1} and {2} {3} stand in the same annulus at {4}; take one of the two depths for the contact',
      kindText(later.fill),
      intervalText(later.interval, units),
      kindText(earlier.fill),
      intervalText(earlier.interval, units),
      stretchText(lower.top, Math.min(upper.bottom, lower.bottom), units),
    ),
    related: [
      { span: earlier.interval.span, message: `${kindText(earlier.fill)} ${intervalText(earlier.interval, units)}` },
    ],
    fixes: () => fixesOf(upper, lower),
  };
}

/** Two fills of one string in the same stretch of its annulus. */
export const rule: Rule = {
  id: 'fill-overlap',
  severity: 'error',
  title: 'Two fills in the same stretch of annulus',
  why: 'Two things cannot stand in one place; the volumes of both are reckoned wrong.',
  mend: 'Take one of the two depths for the contact.',
  source: 'geometry',
  crew: 'Where does the one end and the other begin?',
  flagged: [
    {
      text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 20/40 sand\n  seal [[26 - 29]] bentonite chips',
      fixed: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  pack 29 - 36 20/40 sand\n  seal 26 - 29 bentonite chips',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 20/40 sand\n  seal 26 - 28 bentonite chips' },
    { text: 'casing +0.45 - 36 pvc 114.3 sdr 26\n  pack 28 - 36 20/40 sand\n  plug 35 - 36 cement' },
  ],
  check: function* (context) {
    for (const string of context.log.strings) {
      const stretches = string.fills.filter(({ kind }) => kind !== 'plug').flatMap(stretchOf);
      let deepest: Stretch | null = null;
      for (const each of stretches.sort((a, b) => a.top - b.top || a.fill.line - b.fill.line)) {
        if (deepest && each.top < deepest.bottom - sameDepth) yield reportOf(deepest, each, context);
        if (!deepest || each.bottom > deepest.bottom) deepest = each;
      }
    }
  },
};
