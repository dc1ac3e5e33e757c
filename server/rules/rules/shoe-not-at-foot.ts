import * as l10n from '@vscode/l10n';
import type { Depth, PipeString } from '../../model/log.ts';
import { moveDepth } from '../fixes.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { kindText } from '../strings.ts';

function reportOf(string: PipeString, shoe: Depth, foot: Depth, { log: { units } }: RuleContext): Report {
  const at = { shoe: depthText(shoe.value ?? 0, units), foot: depthText(foot.value ?? 0, units) };
  return {
    span: shoe.span,
    message: l10n.t(
      'the shoe is logged at {0}, but its string ends at {1}; a shoe is the foot of its string, so one of the two depths is wrong',
      at.shoe,
      at.foot,
    ),
    related: [{ span: foot.span, message: l10n.t('the {0} ends here, at {1}', kindText(string), at.foot) }],
    limit: 'shoe-foot-difference-most',
    fixes: () => [
      ...moveDepth(() => l10n.t('Put the shoe at {0}', at.foot), shoe.span.line, shoe, foot, true),
      ...moveDepth(() => l10n.t('End the {0} at {1}', kindText(string), at.shoe), foot.span.line, foot, shoe),
    ],
  };
}

/** A shoe logged away from the foot of its string. */
export const rule: Rule = {
  id: 'shoe-not-at-foot',
  severity: 'warning',
  title: 'A shoe that is not at the foot of its string',
  why: 'The depth of the shoe is where the cased hole ends; two depths for it leave the length of casing, and the place of the seal, in doubt.',
  mend: 'Take one of the two depths, as the notes or the tally say.',
  source: 'geometry',
  crew: 'How deep is the shoe?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe [[6.9]]',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2',
    },
  ],
  silent: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe ?' },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.25' },
  ],
  check: function* (context) {
    const most = context.limits['shoe-foot-difference-most']?.value ?? 0.1;
    for (const string of context.log.strings) {
      const shoe = string.shoe?.depth ?? null;
      const foot = string.interval.bottom;
      if (!shoe || !foot || shoe.value === null || foot.value === null) continue;
      if (Math.abs(shoe.value - foot.value) > most + 1e-9) yield reportOf(string, shoe, foot, context);
    }
  },
};
