import * as l10n from '@vscode/l10n';
import type { Span } from '../../../grammar/span.ts';
import type { Interval, Measure, PipeString, Word } from '../../model/log.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { diameterText, intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { sizeSpan, stringText } from '../strings.ts';

interface Drilled {
  readonly interval: Interval;
  readonly line: number;
  readonly diameter: Measure | null;
  readonly methods: readonly Word[];
}

const drilledIn = ({ log }: RuleContext): Drilled[] => [
  ...log.hole,
  ...log.drilling.flatMap((each) =>
    each.intervals.map((interval) => ({ ...interval, diameter: interval.bit ?? each.bit })),
  ),
];

const isUnderReamed = ({ methods }: Drilled): boolean => methods.some(({ id }) => id.includes('ream'));

const insideOf = ({ size }: PipeString): number | null => size.insideDiameter ?? size.outsideDiameter;

/** Hole that begins at or below the foot was drilled through the string that stands above it. */
const isBelow = (each: Drilled, string: PipeString): boolean =>
  (topOf(each) ?? -1) >= (bottomOf(string) ?? Number.POSITIVE_INFINITY) - sameDepth && (topOf(string) ?? 1) <= 0;

function reportOf(each: Drilled, diameter: number, string: PipeString, { log }: RuleContext): Report {
  const inside = diameterText(insideOf(string) ?? 0, log.units);
  const span: Span = each.diameter?.span ?? each.interval.span;
  return {
    span,
    doubts: [each.diameter, string.size.outside ?? string.size.nominal],
    message: l10n.t(
      '{0} was drilled {1}, through {2}, which is {3} inside: the bit does not pass; correct a diameter or a depth, or say under-reamed',
      intervalText(each.interval, log.units),
      diameterText(diameter, log.units),
      stringText(string, log),
      inside,
    ),
    related: [{ span: sizeSpan(string), message: l10n.t('{0} inside', inside) }],
  };
}

/** Hole below a string, drilled wider than the inside of that string. */
export const rule: Rule = {
  id: 'bit-wider-than-string',
  severity: 'error',
  title: 'A bit wider than the string that it had to pass',
  why: 'Hole below the foot of a standing string was drilled through it; a wider bit does not pass, so a diameter or a depth is wrong.',
  mend: 'Correct the diameter or the depth, or write `under-reamed`.',
  source: 'geometry',
  crew: 'What bit was used below the string, and what pipe is the string?',
  flagged: [
    {
      text: 'hole\n  0 - 7.2 254\n  7.2 - 61 [[165]]\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
      fixed: 'hole\n  0 - 7.2 254\n  7.2 - 61 165?\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
    },
  ],
  silent: [
    { text: 'hole\n  0 - 7.2 254\n  7.2 - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
    { text: 'hole\n  0 - 61 200\ncasing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40' },
    { text: 'hole\n  0 - 7.2 254\n  7.2 - 61 165 under-reamed\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
  ],
  check: function* (context) {
    for (const string of context.log.strings) {
      const inside = insideOf(string);
      if (inside === null) continue;
      for (const each of drilledIn(context)) {
        const diameter = each.diameter?.value ?? null;
        if (diameter === null || diameter <= inside || isUnderReamed(each) || !isBelow(each, string)) continue;
        yield reportOf(each, diameter, string, context);
      }
    }
  },
};
