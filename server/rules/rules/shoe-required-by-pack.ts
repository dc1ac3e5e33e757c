import * as l10n from '@vscode/l10n';
import type { PipeString } from '../../model/log.ts';
import type { LimitInForce } from '../../packs/limits.ts';
import { askedText } from '../asked.ts';
import { fix, lineAfter } from '../fixes.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { shoeAsked } from '../shoe-asked.ts';
import { isDriven, isMetal } from '../strings.ts';

const isBare = ({ shoe }: PipeString): boolean => shoe === null || shoe.kinds.some(({ id }) => id === 'no-shoe');

function reportOf(casing: PipeString, asked: LimitInForce, { log, tree }: RuleContext): Report {
  const foot = casing.interval.bottom;
  const line = lineAfter(casing.line, tree.lines[casing.line]?.text ?? '', 'shoe  ?');
  return {
    span: foot?.span ?? casing.span,
    severity: isDriven(casing, log) ? 'error' : 'warning',
    message: l10n.t(
      'no shoe is logged at {0}: {1}; log it, or shoe ? to ask the crew',
      depthText(foot?.value ?? 0, log.units),
      askedText(asked),
    ),
    limit: asked.key,
    fixes: () =>
      casing.shoe === null ? [fix(l10n.t('Add a shoe line with ?, to ask the crew'), [line], { preferred: true })] : [],
  };
}

/** Casing without the shoe that the pack asks for. */
export const rule: Rule = {
  id: 'shoe-required-by-pack',
  severity: 'warning',
  title: 'No shoe where the pack asks for one',
  why: 'The shoe keeps the foot of the casing whole and round as it is driven or turned into its seat.',
  mend: 'Log the shoe. Where nobody knows, `shoe ?` keeps the question.',
  source: 'the pack’s limit; Maine Ch. 232, Wisconsin NR 812, Quebec Q-2, r. 6 (since replaced)',
  crew: 'Was a shoe fitted, and of what kind?',
  flagged: [
    {
      text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\n  - 200 6\ncasing +1 - [[40]] steel 6.625 x 0.28',
      fixed:
        'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\n  - 200 6\ncasing +1 - 40 steel 6.625 x 0.28\n  shoe  ?',
    },
    { text: 'rules wisconsin-nr812\nunits ft in\ncasing +1 - [[120]] steel 6.625 x 0.28 welded' },
  ],
  silent: [
    {
      text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\n  - 200 6\ncasing +1 - 40 steel 6.625 x 0.28\n  shoe 40 coupling',
    },
    { text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 cable tool\ncasing +1 - 40 steel 6.625 x 0.28' },
    { text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\ncasing +1 - 40 pvc 4.5 x 0.237' },
    { text: 'rules wisconsin-nr812\nunits ft in\ncasing +1 - 60 steel 6.625 x 0.28 welded' },
  ],
  check: (context): Report[] =>
    context.log.strings.flatMap((string) => {
      const asked = isBare(string) && isMetal(string) && string.screens.length === 0 && shoeAsked(string, context);
      return asked ? [reportOf(string, asked, context)] : [];
    }),
};
