import * as l10n from '@vscode/l10n';
import type { Depth, PipeString, WellLog } from '../../model/log.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isDriven, stringText } from '../strings.ts';

type Words = (depth: string, string: string) => string;

const belowFoot: Words = (...parts) =>
  l10n.t(
    'a centralizer at {0} on {1} is below its foot; correct the depth, or put the line under the string that carries it',
    ...parts,
  );

const aboveTop: Words = (...parts) =>
  l10n.t(
    'a centralizer at {0} on {1} is above its top; correct the depth, or put the line under the string that carries it',
    ...parts,
  );

const aboveGround: Words = (...parts) =>
  l10n.t(
    'a centralizer at {0} on {1} is above ground, where there is no hole to hold it off; correct the depth, or put the line under the string that carries it',
    ...parts,
  );

const onDriven: Words = (...parts) =>
  l10n.t(
    'a centralizer at {0} on {1} is logged, and the string is driven, so that it has no annulus; correct the depth, or put the line under the string that carries it',
    ...parts,
  );

function wrongWith(depth: number, string: PipeString, log: WellLog): Words | null {
  const foot = bottomOf(string);
  const top = topOf(string);
  if (foot !== null && depth > foot + sameDepth) return belowFoot;
  if (top !== null && depth < top - sameDepth) return aboveTop;
  if (depth < -sameDepth) return aboveGround;
  return isDriven(string, log) ? onDriven : null;
}

const reportOf = (position: Depth, wrong: Words, string: PipeString, { log }: RuleContext): Report => ({
  span: position.span,
  doubts: [position],
  message: wrong(depthText(position.value ?? 0, log.units), stringText(string, log)),
  related: [{ span: string.interval.span, message: l10n.t('the string') }],
});

/** A centralizer off its string, or where there is no annulus. */
export const rule: Rule = {
  id: 'centralizer-outside',
  severity: 'warning',
  title: 'A centralizer outside its string or its annulus',
  why: 'A centralizer sits on its string, in the annulus; one elsewhere has a wrong depth or hangs under the wrong string.',
  mend: 'Correct the depth, or move the line under the string that carries it.',
  source: 'geometry',
  crew: 'At what depths are the centralizers, and on which string?',
  flagged: [
    {
      text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  centralizers 1.5 4 [[8.7]]',
      fixed: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  centralizers 1.5 4 8.7?',
    },
    { text: 'casing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7\n  centralizers [[40]]' },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  centralizers 1.5 4 6.7' }],
  check: function* (context) {
    for (const string of context.log.strings)
      for (const position of string.centralizers?.positions ?? []) {
        const wrong = position.value === null ? null : wrongWith(position.value, string, context.log);
        if (wrong) yield reportOf(position, wrong, string, context);
      }
  },
};
