import * as l10n from '@vscode/l10n';
import type { Fill } from '../../model/log.ts';
import type { FillRecord } from '../../record/record.ts';
import { limitText } from '../limit-text.ts';
import { numberText, stretchText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

const more = (...parts: string[]): string =>
  l10n.t(
    '{0} {1}: the bags make {2}, but {3} is logged as placed, {4} % more; they may be {5} apart; correct the count, the mass of a bag, the water or the volume',
    ...parts,
  );

const less = (...parts: string[]): string =>
  l10n.t(
    '{0} {1}: the bags make {2}, but {3} is logged as placed, {4} % less; they may be {5} apart; correct the count, the mass of a bag, the water or the volume',
    ...parts,
  );

function reportOf(fill: Fill, { placed, fromBags, top, bottom }: FillRecord, context: RuleContext): Report | null {
  const most = context.limits['bags-volume-tolerance'];
  if (placed === null || fromBags === null || fromBags <= 0 || !most) return null;
  const apart = placed / fromBags - 1;
  if (Math.abs(apart) <= most.value + 0.005) return null;
  const unit = fill.volume?.unit ?? 'm3';
  return {
    span: fill.bags?.span ?? fill.span,
    doubts: [fill.bags?.count, fill.bags?.massEach, fill.volume],
    message: (apart > 0 ? more : less)(
      kindText(fill),
      stretchText(top, bottom, context.log.units),
      valueText(fromBags, unit),
      valueText(placed, unit),
      numberText(Math.abs(apart) * 100, 2),
      limitText(context, 'bags-volume-tolerance'),
    ),
    related: fill.volume ? [{ span: fill.volume.span, message: l10n.t('{0} placed', valueText(placed, unit)) }] : [],
    limit: 'bags-volume-tolerance',
  };
}

/** Bags and water that do not make the volume logged. */
export const rule: Rule = {
  id: 'bags-volume-disagree',
  severity: 'warning',
  title: 'Bags that do not make the volume said to be placed',
  why: 'Bags, water and volume are three tellings of one fact. Where they disagree, one is a slip, and the strength of the grout is in doubt.',
  mend: 'Correct the count of bags, the mass of one, the water, or the volume; mark with `?` what nobody remembers.',
  source: 'absolute volumes of cement and water; the tolerance is common practice, no source',
  crew: 'How many bags were used, of what mass, and how much grout was placed?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, [[5 x 40 kg bags]], w/c 0.5',
      fixed:
        'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, 5? x 40 kg bags, w/c 0.5',
    },
  ],
  silent: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, 9 x 40 kg bags, w/c 0.5',
    },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3, ? bags, w/c 0.5' },
  ],
  check: function* (context) {
    const records = new Map(context.record.fills.map((each) => [each.line, each]));
    for (const fill of context.log.strings.flatMap((string) => string.fills)) {
      const record = records.get(fill.line);
      const report = record ? reportOf(fill, record, context) : null;
      if (report) yield report;
    }
  },
};
