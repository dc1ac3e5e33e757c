import * as l10n from '@vscode/l10n';
import type { Abandonment, Fill, WellLog } from '../../model/log.ts';
import { fix, lineAfter } from '../fixes.ts';
import { limitText } from '../limit-text.ts';
import { stretchText } from '../messages.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

interface Filled {
  readonly fill: Fill;
  readonly top: number;
  readonly bottom: number;
}

const filledIn = ({ fills }: Abandonment): Filled[] =>
  fills
    .flatMap((fill) => {
      const [top, bottom] = [fill.interval?.top?.value ?? null, fill.interval?.bottom?.value ?? null];
      return top === null || bottom === null ? [] : [{ fill, top, bottom }];
    })
    .sort((a, b) => a.top - b.top);

/** The last line counts on from where the one above it ends, so that the new one does as well. */
function askBelow(fill: Fill, { fills }: Abandonment, { tree }: RuleContext): Fix[] {
  if (fills.at(-1) !== fill) return [];
  const edits = [lineAfter(fill.line, tree.lines[fill.line]?.text ?? '', '- td  ?')];
  return [fix(l10n.t('Ask the crew what fills the rest, with ?'), edits, { preferred: true })];
}

function reportOf({ fill, bottom }: Filled, to: number, abandonment: Abandonment, context: RuleContext): Report {
  return {
    span: fill.interval?.span ?? fill.span,
    doubts: [fill.interval?.bottom],
    message: l10n.t(
      'the abandonment leaves {0} open, more than {1}: an open stretch lets water pass from one ground to another for good; log what stands there, or correct a depth',
      stretchText(bottom, to, context.log.units),
      limitText(context, 'foot-difference-most'),
    ),
    limit: 'foot-difference-most',
    fixes: () => (to === context.log.totalDepth ? askBelow(fill, abandonment, context) : []),
  };
}

function* openBelow(filled: readonly Filled[], { totalDepth }: WellLog, most: number) {
  let deepest = filled[0];
  for (const each of filled) {
    if (deepest && each.top - deepest.bottom > most) yield { above: deepest, to: each.top };
    if (!deepest || each.bottom > deepest.bottom) deepest = each;
  }
  if (deepest && totalDepth !== null && totalDepth - deepest.bottom > most) yield { above: deepest, to: totalDepth };
}

/** An abandonment that leaves part of the hole unfilled. */
export const rule: Rule = {
  id: 'abandonment-leaves-open',
  severity: 'warning',
  title: 'An abandonment that stops short of the bottom, or leaves a gap',
  why: 'What is left open in a hole sealed for good is never seen again, and joins grounds that were apart.',
  mend: 'Log what fills the rest, with `?` where nobody knows, or correct a depth.',
  source: 'common practice, no source',
  crew: 'What stands in the hole there, and how deep does the filling go?',
  flagged: [
    {
      text: 'hole\n  0 - 61 152\nabandonment 2026-06-01\n  [[0 - 40]] neat cement, 0.8 m3, tremie',
      fixed: 'hole\n  0 - 61 152\nabandonment 2026-06-01\n  0 - 40 neat cement, 0.8 m3, tremie\n  - td  ?',
    },
    {
      text: 'hole\n  0 - 61 152\nabandonment\n  [[0 - 20]] neat cement\n  30 - 61 bentonite chips',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\nabandonment\n  1 - 61 neat cement, 1.2 m3, tremie' },
    { text: 'hole\n  0 - 61 152\nabandonment\n  30 - 60.8 gravel\n  1 - 30 bentonite chips' },
    { text: 'hole\n  0 - 61 152\nabandonment\n  0 - ? neat cement' },
    { text: 'abandonment\n  0 - 40 neat cement' },
  ],
  check: function* (context) {
    const most = context.limits['foot-difference-most']?.value;
    if (most === undefined) return;
    for (const abandonment of context.log.abandonments) {
      const filled = filledIn(abandonment);
      if (filled.length < abandonment.fills.length) continue;
      for (const { above, to } of openBelow(filled, context.log, most)) yield reportOf(above, to, abandonment, context);
    }
  },
};
