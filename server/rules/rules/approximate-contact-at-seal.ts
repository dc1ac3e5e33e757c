import * as l10n from '@vscode/l10n';
import type { Depth, PipeString, Stratum } from '../../model/log.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { bottomOf } from '../columns.ts';
import { depthText, lengthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal, stringText } from '../strings.ts';

/** As near to the foot as a contact must be known: what casing is usually set into rock. Common practice, no source. */
const nearFoot = 1.5;

const isUnsure = ({ approximate, doubtful }: Depth): boolean => approximate || doubtful;

/** The contact from loose ground into rock, where the log has one. */
function rockContact(strata: readonly Stratum[]): Depth | null {
  const rock = strata.findIndex(({ ground }) => ground?.rock === true);
  return rock > 0 ? (strata[rock - 1]?.interval.bottom ?? null) : null;
}

function reportOf(string: PipeString, contact: Depth, foot: number, { log }: RuleContext): Report {
  const depth = contact.value ?? 0;
  return {
    span: contact.span,
    message: l10n.t(
      'rock begins at about {0}, and {1} ends only {2} from there: whether its seal stands in rock hangs on this contact; confirm it with the crew',
      depthText(depth, log.units),
      stringText(string, log),
      lengthText(foot - depth, log.units),
    ),
    related: [{ span: string.interval.span, message: l10n.t('the string') }],
  };
}

/** The top of rock known only roughly, where a string is sealed into it. */
export const rule: Rule = {
  id: 'approximate-contact-at-seal',
  severity: 'information',
  title: 'An approximate top of rock where a seal depends on it',
  why: 'A string that ends in loose ground instead of rock is not sealed. Where it ends near the contact, the contact must be known.',
  mend: 'Confirm the contact, and take off the `~` or the `?`.',
  source: 'common practice, no source',
  crew: 'At what depth did you meet the rock?',
  unfixed: 'The contact is marked as uncertain already; only the crew can take the mark off.',
  flagged: [
    {
      text: 'strata\n  0 - [[~6.5]] clay\n  - 61 limestone\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
  ],
  silent: [
    {
      text: 'strata\n  0 - 6.5 clay\n  - 61 limestone\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
    {
      text: 'strata\n  0 - ~3 clay\n  - 61 limestone\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3',
    },
  ],
  check: function* (context) {
    const contact = rockContact(context.log.strata);
    if (!contact || contact.value === null || !isUnsure(contact)) return;
    for (const string of context.log.strings.filter((each) => isPermanent(each) && each.fills.some(isSeal))) {
      const foot = bottomOf(string);
      if (foot !== null && Math.abs(foot - contact.value) <= nearFoot) yield reportOf(string, contact, foot, context);
    }
  },
};
