import * as l10n from '@vscode/l10n';
import type { PipeString, WellLog } from '../../model/log.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { bottomOf } from '../columns.ts';
import { fix, lineAfter } from '../fixes.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext, Severity } from '../rule.ts';
import { shoeAsked } from '../shoe-asked.ts';
import { isDriven, isMetal, isSeal, stratumAt, stringText } from '../strings.ts';

interface Reason {
  readonly severity: Severity;
  /** The message, given the string and the place of its foot. */
  readonly words: (string: string, foot: string | null) => string;
}

const drivenWords: Reason['words'] = (string, foot) =>
  foot === null
    ? l10n.t(
        'no shoe is logged for {0}: driven casing needs one, so that its foot neither collapses nor tears; add the shoe, or ask the crew whether one was fitted',
        string,
      )
    : l10n.t(
        'no shoe is logged for {0}: driven casing needs one, so that its foot neither collapses nor tears; add the shoe at {1}, or ask the crew whether one was fitted',
        string,
        foot,
      );

const groutedWords: Reason['words'] = (string, foot) =>
  foot === null
    ? l10n.t(
        'no shoe is logged for {0}: where casing is set in a grouted oversize hole, a shoe still guides and protects its foot; add the shoe, or ask the crew whether one was fitted',
        string,
      )
    : l10n.t(
        'no shoe is logged for {0}: where casing is set in a grouted oversize hole, a shoe still guides and protects its foot; add the shoe at {1}, or ask the crew whether one was fitted',
        string,
        foot,
      );

const isGrouted = (string: PipeString): boolean => string.fills.some(isSeal);

function reasonFor(string: PipeString, { log }: RuleContext): Reason | null {
  if (isDriven(string, log)) return { severity: 'error', words: drivenWords };
  if (isGrouted(string)) return { severity: 'hint', words: groutedWords };
  const foot = bottomOf(string);
  return foot === null ? null : rockReason(foot, log);
}

function rockReason(foot: number, log: WellLog): Reason | null {
  const ground = stratumAt(log, foot);
  if (!ground?.ground?.rock) return null;
  return {
    severity: 'warning',
    words: (text) =>
      l10n.t(
        'no shoe is logged for {0}: it is seated in rock ({1}) with no grout logged, where the shoe makes the seat; add the shoe at {2}, or ask the crew whether one was fitted',
        text,
        ground.description,
        depthText(foot, log.units),
      ),
  };
}

const needsNone = (string: PipeString): boolean =>
  string.kind !== 'casing' ||
  string.shoe !== null ||
  string.screens.length > 0 ||
  !isPermanent(string) ||
  !isMetal(string);

function reportOf(string: PipeString, { severity, words }: Reason, { tree, log }: RuleContext): Report {
  const foot = string.interval.bottom;
  const at = foot === null || foot.value === null ? null : depthText(foot.value, log.units);
  const line = (depth: string) => lineAfter(string.line, tree.lines[string.line]?.text ?? '', `shoe  ${depth}`);
  return {
    span: foot?.span ?? string.span,
    severity,
    message: words(stringText(string, log), at),
    fixes: () => [
      fix(l10n.t('Add a shoe line with ?, to ask the crew'), [line('?')], { preferred: true }),
      ...(foot && foot.value !== null
        ? [fix(l10n.t('Add a shoe at the foot of the string'), [line(foot.written)])]
        : []),
    ],
  };
}

/** A steel string that was driven, or is seated in rock, with no shoe in the log. */
export const rule: Rule = {
  id: 'missing-shoe',
  severity: 'warning',
  title: 'No shoe on a string that is driven, seated in rock or grouted',
  why: 'The shoe keeps the foot of the casing round and seats it. On driven casing it is what does the driving; on casing seated in rock with no grout, the seat is what keeps shallow water out.',
  mend: 'Log the shoe at the foot of the string. Where nobody knows, `shoe ?` keeps the question.',
  source: 'common practice; Maine Ch. 232 asks for a shoe or coupling on every rotary well with steel casing',
  crew: 'Was a shoe fitted, and of what kind?',
  flagged: [
    {
      text: 'casing +0.6 - [[42.7]] steel 168.3 x 4.8 driven',
      fixed: 'casing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe  ?',
    },
    { text: 'strata\n  0 - 6 clay\n  6 - 61 limestone\ncasing +0.45 - [[7.2]] steel 168.3 x 6.4 welded' },
    { text: 'casing +0.45 - [[7.2]] steel 168.3 x 6.4 welded\n  grout 0 - 7.2 neat cement, 0.29 m3' },
  ],
  silent: [
    {
      text: 'rules maine-232\nunits ft in\nhole\n  0 - 40 10 air rotary\ncasing +1 - 40 steel 6.625 x 0.28\n  grout 0 - 40 neat cement',
    },
    { text: 'casing +0.6 - 42.7 steel 168.3 x 4.8 driven\n  shoe 42.7' },
    { text: 'strata\n  0 - 61 limestone\ncasing +0.45 - 7.2 pvc 168.3 sdr 26' },
    { text: 'casing +0.5 - 6.5 concrete 900\n  seal 0 - 2.5 bentonite chips' },
    { text: 'casing 0 - 9.1 steel 273 temporary, pulled 2026-05-05 11:30' },
    { text: 'strata\n  0 - 30 sand\ncasing +0.45 - 24 steel 168.3 x 6.4\n  screen 24 - 30 stainless 150, slot 0.5' },
  ],
  check: function* (context) {
    for (const string of context.log.strings) {
      const reason = needsNone(string) || shoeAsked(string, context) ? null : reasonFor(string, context);
      if (reason) yield reportOf(string, reason, context);
    }
  },
};
