import * as l10n from '@vscode/l10n';
import type { HoleEntry } from '../../model/log.ts';
import { sameDepth, topOf } from '../columns.ts';
import { diameterText, intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isTooNarrow } from '../strings.ts';

const widened = ({ methods, reamedFrom }: HoleEntry): boolean =>
  reamedFrom !== null || methods.some(({ id }) => id.includes('ream'));

/** A millimetre: bits of one nominal size differ by more. */
const sameDiameter = 0.001;

function reportOf(upper: HoleEntry, lower: HoleEntry, { log: { units } }: RuleContext): Report {
  const size = (entry: HoleEntry) => diameterText(entry.diameter?.value ?? 0, units);
  return {
    span: lower.diameter?.span ?? lower.span,
    doubts: [lower.diameter, upper.diameter],
    message: l10n.t(
      'the hole is {0} at {1} but only {2} above it, at {3}: a bit cannot pass a narrower hole; correct a diameter, or say under-reamed',
      size(lower),
      intervalText(lower.interval, units),
      size(upper),
      intervalText(upper.interval, units),
    ),
    related: [{ span: upper.diameter?.span ?? upper.span, message: l10n.t('{0} above', size(upper)) }],
  };
}

/** A hole that grows wider with depth with no word of under-reaming. */
export const rule: Rule = {
  id: 'hole-wider-below',
  severity: 'warning',
  title: 'A hole wider below than above',
  why: 'A bit that drilled the lower hole had to pass the upper one. The diameters have changed places, or the hole was under-reamed and the log does not say so.',
  mend: 'Correct the diameter, or write `under-reamed` on the lower line.',
  source: 'geometry',
  crew: 'Which bits were used, and was the hole under-reamed?',
  flagged: [{ text: 'hole\n  0 - 7.2 152\n  7.2 - 61 [[254]]', fixed: 'hole\n  0 - 7.2 152\n  7.2 - 61 254?' }],
  silent: [
    { text: 'hole\n  0 - 7.2 254\n  7.2 - 61 152' },
    { text: 'hole\n  0 - 30 152\n  30 - 36 254 under-reamed' },
    { text: 'hole\n  0 - 30 254 reamed from 152\n  30 - 61 152' },
  ],
  check: function* (context) {
    let above: HoleEntry | null = null;
    for (const entry of context.log.hole) {
      const wide = entry.diameter?.value ?? null;
      if (wide === null || isTooNarrow(wide) || widened(entry)) continue;
      const narrow: number = above?.diameter?.value ?? wide;
      const follows: boolean = above === null || (topOf(entry) ?? 0) > (topOf(above) ?? 0) + sameDepth;
      if (above && follows && wide > narrow + sameDiameter) yield reportOf(above, entry, context);
      else above = entry;
    }
  },
};
