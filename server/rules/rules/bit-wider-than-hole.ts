import * as l10n from '@vscode/l10n';
import type { DrilledInterval, HoleEntry, Measure } from '../../model/log.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { diameterText, intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

/** A millimetre: bits of one nominal size differ by more. */
const sameDiameter = 0.001;

/** The widest hole logged over the whole of a drilled interval; null where none is. */
function holeAround(drilled: DrilledInterval, hole: readonly HoleEntry[]): Measure | null {
  const [top, bottom] = [topOf(drilled), bottomOf(drilled)];
  if (top === null || bottom === null) return null;
  return hole
    .filter((each) => (topOf(each) ?? 1e9) <= top + sameDepth && (bottomOf(each) ?? -1e9) >= bottom - sameDepth)
    .reduce<Measure | null>(
      (widest, { diameter }) => ((diameter?.value ?? 0) > (widest?.value ?? 0) ? diameter : widest),
      null,
    );
}

function reportOf(drilled: DrilledInterval, bit: Measure | null, { log }: RuleContext): Report[] {
  const hole = holeAround(drilled, log.hole);
  if (bit?.value == null || hole?.value == null || bit.value <= hole.value + sameDiameter) return [];
  return [
    {
      span: bit.span,
      doubts: [bit, hole],
      message: l10n.t(
        '{0} was drilled with a bit of {1}, but the hole is logged as {2}: a bit makes no narrower hole than itself; correct one of the two',
        intervalText(drilled.interval, log.units),
        diameterText(bit.value, log.units),
        diameterText(hole.value, log.units),
      ),
      related: [{ span: hole.span, message: l10n.t('the hole, {0}', diameterText(hole.value, log.units)) }],
    },
  ];
}

/** A bit wider than the hole that it made. */
export const rule: Rule = {
  id: 'bit-wider-than-hole',
  severity: 'warning',
  title: 'A bit wider than the hole that it drilled',
  why: 'The volume of the annulus and of the grout is reckoned from the diameter of the hole.',
  mend: 'Correct the bit or the hole.',
  source: 'geometry',
  crew: 'Which bit was used?',
  flagged: [
    {
      text: 'hole\n  0 - 61 152\ndrilling\n  7.2 - 13.2 18 min, bit [[165]]',
      fixed: 'hole\n  0 - 61 152\ndrilling\n  7.2 - 13.2 18 min, bit 165?',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 61 152\ndrilling\n  7.2 - 13.2 18 min, bit 152' },
    { text: 'hole\n  0 - 61 254\ndrilling\n  7.2 - 13.2 18 min, bit 152' },
    { text: 'drilling\n  7.2 - 13.2 18 min, bit 165' },
  ],
  check: (context) =>
    context.log.drilling.flatMap((drilling) =>
      drilling.intervals.flatMap((drilled) => reportOf(drilled, drilled.bit ?? drilling.bit, context)),
    ),
};
