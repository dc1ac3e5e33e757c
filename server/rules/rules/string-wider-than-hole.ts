import * as l10n from '@vscode/l10n';
import type { HoleEntry, PipeString } from '../../model/log.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { diameterText, intervalText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isDriven, isTooNarrow, sizeSpan, stringText } from '../strings.ts';

interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

const shared = (a: Parameters<typeof topOf>[0], b: Parameters<typeof topOf>[0]): Stretch | null => {
  const top = Math.max(topOf(a) ?? Number.POSITIVE_INFINITY, topOf(b) ?? Number.POSITIVE_INFINITY);
  const bottom = Math.min(bottomOf(a) ?? Number.NEGATIVE_INFINITY, bottomOf(b) ?? Number.NEGATIVE_INFINITY);
  return bottom > top + sameDepth ? { top, bottom } : null;
};

/** True where another line logs the whole stretch at a width that the string fits. */
const reamedOver = (hole: readonly HoleEntry[], { top, bottom }: Stretch, outside: number): boolean =>
  hole.some(
    (each) =>
      (each.diameter?.value ?? 0) > outside &&
      (topOf(each) ?? 0) <= top + sameDepth &&
      (bottomOf(each) ?? 0) >= bottom - sameDepth,
  );

function* holeReports(string: PipeString, outside: number, { log }: RuleContext): Generator<Report> {
  for (const entry of log.hole) {
    const diameter = entry.diameter?.value ?? null;
    const stretch = diameter !== null && outside >= diameter && !isTooNarrow(diameter) ? shared(string, entry) : null;
    if (diameter === null || !stretch || reamedOver(log.hole, stretch, outside)) continue;
    yield {
      span: sizeSpan(string),
      doubts: [string.size.outside ?? string.size.nominal, entry.diameter],
      message: l10n.t(
        '{0} is {1} outside, but the hole is only {2} at {3}; correct one of the diameters, or the depth to which the wider hole goes',
        stringText(string, log),
        diameterText(outside, log.units),
        diameterText(diameter, log.units),
        stretchText(stretch.top, stretch.bottom, log.units),
      ),
      related: [
        {
          span: entry.diameter?.span ?? entry.span,
          message: l10n.t('hole {0}, {1}', intervalText(entry.interval, log.units), diameterText(diameter, log.units)),
        },
      ],
    };
  }
}

function* stringReports(string: PipeString, outside: number, { log }: RuleContext): Generator<Report> {
  for (const other of log.strings) {
    const around = other.size.insideDiameter ?? other.size.outsideDiameter;
    const isWider =
      (other.size.outsideDiameter ?? 0) > outside ||
      ((other.size.outsideDiameter ?? 0) === outside && other.number < string.number);
    if (other === string || around === null || !isWider || outside < around) continue;
    const stretch = shared(string, other);
    if (!stretch) continue;
    yield {
      span: sizeSpan(string),
      doubts: [string.size.outside ?? string.size.nominal, other.size.outside ?? other.size.nominal],
      message: l10n.t(
        '{0} is {1} outside and cannot stand inside {2}, which is {3} inside; correct a size, or the depths that they share, {4}',
        stringText(string, log),
        diameterText(outside, log.units),
        stringText(other, log),
        diameterText(around, log.units),
        stretchText(stretch.top, stretch.bottom, log.units),
      ),
      related: [{ span: sizeSpan(other), message: l10n.t('{0} inside', diameterText(around, log.units)) }],
    };
  }
}

/** A string that is wider than the hole, or than the string around it. */
export const rule: Rule = {
  id: 'string-wider-than-hole',
  severity: 'error',
  title: 'A string wider than the hole or the string that it stands in',
  why: 'Pipe goes down a hole that is wider than its outside; a diameter or a depth is wrong, and every volume around the string with it.',
  mend: 'Correct the diameter, or the depth to which the wider hole goes. Where the casing was driven, say `driven`.',
  source: 'geometry',
  crew: 'What are the diameters of the hole and of the pipe?',
  flagged: [
    {
      text: 'hole\n  0 - 6 254\n  6 - 61 152\ncasing +0.45 - 7.2 steel [[168.3 x 6.4]]\n  shoe 7.2',
      fixed: 'hole\n  0 - 6 254\n  6 - 61 152\ncasing +0.45 - 7.2 steel 168.3? x 6.4\n  shoe 7.2',
    },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\nliner 0 - 61 pvc [[168.3]]' },
  ],
  silent: [
    { text: 'hole\n  0 - 7.2 254\n  7.2 - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
    { text: 'hole\n  0 - 42.7 152\ncasing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7' },
    { text: 'hole\n  0 - 61 152\n  0 - 30 254 reamed from 152\ncasing +0.6 - 30 steel 168.3 x 6.4\n  shoe 30' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\nliner 6 - 61 pvc 114.3 sdr 26' },
  ],
  check: function* (context) {
    for (const string of context.log.strings) {
      const outside = string.size.outsideDiameter;
      if (outside === null) continue;
      if (!isDriven(string, context.log)) yield* holeReports(string, outside, context);
      yield* stringReports(string, outside, context);
    }
  },
};
