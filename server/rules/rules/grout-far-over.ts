import * as l10n from '@vscode/l10n';
import { limitText } from '../limit-text.ts';
import { numberText, stretchText, valueText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, isThousandfold, kindText, type PlacedFill, placedFills, spanOf } from '../strings.ts';

function reportOf({ fill, record, string }: PlacedFill, context: RuleContext): Report | null {
  const { annulus, net } = record;
  const most = context.limits['grout-surplus'];
  if (annulus === null || net === null || annulus <= 0 || !most) return null;
  const times = net / annulus;
  if (times <= most.value || isThousandfold(net, annulus)) return null;
  const unit = fill.volume?.unit ?? 'm3';
  return {
    span: spanOf(fill.volume, fill),
    doubts: [fill.volume, fill.returned, fill.topUp],
    message: l10n.t(
      '{0} {1}: {2} placed, {3} times what the annulus holds, {4}; over {5} asks for a word on where it went: a void, grout lost or returned, a wider hole, or a slip of the pen',
      kindText(fill),
      stretchText(record.top, record.bottom, context.log.units),
      valueText(net, unit),
      numberText(times, 2),
      valueText(annulus, unit),
      limitText(context, 'grout-surplus'),
    ),
    related: [{ span: string.span, message: l10n.t('the string that it stands around') }],
    limit: 'grout-surplus',
  };
}

/** Grout of which much more was placed than its place holds. */
export const rule: Rule = {
  id: 'grout-far-over',
  severity: 'information',
  title: 'Far more grout placed than the annulus holds',
  why: 'A large surplus went somewhere: into a void or an open fracture, back to the surface, or only into the notes.',
  mend: 'Log what came back (`returned`) or was left inside (`plug inside`), say in a remark where the rest went, or correct the volume.',
  source: 'geometry; how much is far is the pack’s, in `general` common practice, no source',
  crew: 'Where did the rest of the grout go?',
  flagged: [
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, [[0.55 m3]]',
      fixed:
        'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.55? m3',
    },
  ],
  silent: [
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
    {
      text: 'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.55 m3, returned 0.2 m3',
    },
  ],
  check: function* (context) {
    for (const placed of placedFills(context.log, context.record.fills)) {
      const report = isSeal(placed.fill) ? reportOf(placed, context) : null;
      if (report) yield report;
    }
  },
};
