import * as l10n from '@vscode/l10n';
import type { Fill, PipeString, WellLog } from '../../model/log.ts';
import { limitGiven } from '../../packs/index.ts';
import type { LimitInForce } from '../../packs/limits.ts';
import { isPermanent } from '../../record/strings/standing.ts';
import { askForSeal } from '../ask-for-seal.ts';
import { askedText } from '../asked.ts';
import { factsOfString, wellCasing } from '../facts.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';
import { isSeal } from '../strings.ts';

/** A gap smaller than this leaves a seal whole. */
const smallest = 0.3;

const top = ({ interval }: Fill): number => interval?.top?.value ?? Number.POSITIVE_INFINITY;
const bottom = ({ interval }: Fill): number => interval?.bottom?.value ?? Number.POSITIVE_INFINITY;

/** The fill at which the seal that begins nearest to the surface ends. */
function footOfSeal(log: WellLog): Fill | null {
  const seals = log.strings.filter(isPermanent).flatMap(({ fills }) => fills.filter(isSeal));
  let last: Fill | null = null;
  for (const seal of [...seals].sort((a, b) => top(a) - top(b))) {
    if (last && top(seal) > bottom(last) + smallest) break;
    if (!last || bottom(seal) > bottom(last)) last = seal;
  }
  return last;
}

const tooShort = (seal: Fill, least: LimitInForce, { units }: WellLog): Report => ({
  span: seal.interval?.bottom?.span ?? seal.span,
  doubts: [seal.interval?.bottom],
  message: l10n.t(
    'the seal ends at {0}; it must reach at least {1}, to keep surface water out; correct the depth, or log what else was placed',
    depthText(bottom(seal), units),
    askedText(least),
  ),
  limit: least.key,
});

const noSeal = (string: PipeString, least: LimitInForce, { tree }: RuleContext): Report => ({
  span: string.interval.span,
  fixes: () => [askForSeal(string, tree)],
  message: l10n.t(
    'no seal is logged around the casing; it must reach at least {0}; log it, or ask the crew',
    askedText(least),
  ),
  limit: least.key,
});

/** An annular seal that does not reach as deep as the pack asks. */
export const rule: Rule = {
  id: 'seal-shorter-than-pack',
  severity: 'warning',
  title: 'A seal shorter than the pack asks',
  why: 'The annular seal is what keeps surface water from running down outside the casing.',
  mend: 'Log all that was placed, correct the interval, or ask the authority.',
  source: 'the pack’s limit',
  crew: 'What was placed around the casing, and from where to where?',
  flagged: [
    {
      text: 'rules california-b74\nunits ft in\nuse domestic\ncasing +1 - 120 pvc 4.5 x 0.237\n  grout 0 - [[15]] neat cement',
      fixed:
        'rules california-b74\nunits ft in\nuse domestic\ncasing +1 - 120 pvc 4.5 x 0.237\n  grout 0 - 15? neat cement',
    },
    {
      text: 'rules california-b74\nunits ft in\nuse public supply\ncasing +1 - 120 pvc 4.5 x 0.237\n  grout 0 - [[30]] neat cement\n  seal 60 - 70 bentonite chips',
    },
    {
      text: 'rules oregon-690-210\nunits ft in\nstrata\n  0 - 60 gravel\ncasing [[+1 - 60]] steel 6.625 x 0.25 driven',
    },
  ],
  silent: [
    {
      text: 'rules california-b74\nunits ft in\nuse domestic\ncasing +1 - 120 pvc 4.5 x 0.237\n  seal 0 - 5 bentonite chips\n  grout 5 - 20 neat cement',
    },
    {
      text: 'rules california-b74\nunits ft in\nuse irrigation\ncasing +1 - 120 pvc 4.5 x 0.237\n  grout 0 - 15 neat cement',
    },
    {
      text: 'rules oregon-690-210\nunits ft in\nstrata\n  0 - 12 clay\n  - 60 gravel\ncasing +1 - 60 steel 6.625 x 0.25\n  grout 0 - 19 neat cement',
    },
    { text: 'rules california-b74\nuse domestic' },
  ],
  check: (context) => {
    const { log, limits } = context;
    const casing = wellCasing(log);
    const least = casing && limitGiven(limits, 'seal-depth-least', factsOfString(casing, log));
    if (!casing || !least || log.abandonments.length > 0) return [];
    const seal = footOfSeal(log);
    if (!seal) return [noSeal(casing, least, context)];
    return Number.isFinite(bottom(seal)) && bottom(seal) < least.value - 1e-3 ? [tooShort(seal, least, log)] : [];
  },
};
