import * as l10n from '@vscode/l10n';
import type { PipeString } from '../../model/log.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { anotherCentralizer } from '../another-centralizer.ts';
import { bottomOf, topOf } from '../columns.ts';
import { fix, lineAfter } from '../fixes.ts';
import { limitText } from '../limit-text.ts';
import { lengthText, stretchText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isDriven, lengthAsSet, stringText } from '../strings.ts';

/** A whole string without centralizers is one gap, from the ground to its foot. */
const isOneGap = (string: PipeString, { limits }: RuleContext): boolean =>
  (bottomOf(string) ?? 0) - Math.max(0, topOf(string) ?? 0) >
  (limits['centralizer-gap-most']?.value ?? Number.POSITIVE_INFINITY);

const isLongEnough = (string: PipeString, { limits }: RuleContext): boolean =>
  (lengthAsSet(string) ?? 0) >= (limits['centralizer-string-least']?.value ?? Number.POSITIVE_INFINITY);

/** Strings whose grout needs them held off the wall. */
const concerned = (context: RuleContext): PipeString[] =>
  context.log.strings.filter(
    (string) =>
      !isDriven(string, context.log) &&
      isPermanent(string) &&
      string.fills.some(({ kind }) => kind === 'grout') &&
      isLongEnough(string, context),
  );

const without = (string: PipeString, { log, tree }: RuleContext): Report => ({
  span: string.interval.span,
  fixes: () => [
    fix(
      l10n.t('Ask the crew for the centralizers, with ?'),
      [lineAfter(string.line, tree.lines[string.line]?.text ?? '', 'centralizers  ?')],
      { preferred: true },
    ),
  ],
  message: l10n.t(
    'no centralizers are logged on {0}, which is grouted: casing that lies against the wall leaves a stretch with no grout; log them, or centralizers ? to ask the crew',
    stringText(string, log),
  ),
  limit: 'centralizer-gap-most',
});

function* gapsOf(string: PipeString, context: RuleContext): Generator<Report> {
  const { log, limits, record } = context;
  const most = limits['centralizer-gap-most'];
  const gaps = record.centralizerGaps.find((each) => each.string === string.number)?.gaps ?? [];
  for (const { top, bottom } of gaps) {
    if (!most || bottom - top <= most.value + 1e-9) continue;
    yield {
      span: string.centralizers?.span ?? string.span,
      fixes: () => anotherCentralizer(string),
      message: l10n.t(
        'no centralizer on {0} at {1}, a gap of {2}; at most {3} keeps the casing off the wall, so that grout can pass all round',
        stringText(string, log),
        stretchText(top, bottom, log.units),
        lengthText(bottom - top, log.units),
        limitText(context, 'centralizer-gap-most'),
      ),
      limit: 'centralizer-gap-most',
    };
  }
}

/** Long stretches of a grouted string with nothing that holds it off the wall. */
export const rule: Rule = {
  id: 'centralizer-gap',
  severity: 'warning',
  title: 'A long stretch of grouted casing without a centralizer',
  why: 'Casing that lies against the wall of the hole leaves a channel that grout does not fill.',
  mend: 'Log the centralizers that were fitted, or `centralizers ?` to ask the crew. Short strings need none.',
  source: 'the spacing is common practice, no source',
  crew: 'How many centralizers were fitted, and at what depths?',
  flagged: [
    {
      text: 'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  [[centralizers 2 12 38]]\n  grout 0 - 40 neat cement, 1.4 m3',
      fixed:
        'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  centralizers 2 12 38 ?\n  grout 0 - 40 neat cement, 1.4 m3',
    },
    { text: 'casing [[+0.45 - 40]] steel 168.3 x 6.4\n  shoe 40\n  grout 0 - 40 neat cement, 1.4 m3' },
  ],
  silent: [
    {
      text: 'casing +0.45 - 40 steel 168.3 x 6.4\n  shoe 40\n  centralizers 3 14 26 38\n  grout 0 - 40 neat cement, 1.4 m3',
    },
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.29 m3' },
    { text: 'casing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7' },
  ],
  check: function* (context) {
    for (const string of concerned(context))
      if (string.centralizers !== null) yield* gapsOf(string, context);
      else if (isOneGap(string, context)) yield without(string, context);
  },
};
