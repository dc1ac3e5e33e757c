import * as l10n from '@vscode/l10n';
import type { DrilledInterval, Stratum } from '../../model/log.ts';
import { bottomOf, sameDepth, topOf } from '../columns.ts';
import { figureValues } from '../figure-values.ts';
import { limitText } from '../limit-text.ts';
import { depthText, numberText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

interface Rod {
  readonly drilled: DrilledInterval;
  readonly top: number;
  readonly bottom: number;
  /** Metres a second. */
  readonly rate: number;
}

function rodsOf(context: RuleContext): Rod[] {
  const intervals = context.log.drilling.flatMap((each) => each.intervals);
  if (intervals.length === 0) return [];
  const rates = figureValues(context);
  return intervals.flatMap((drilled, index) => {
    const rate = rates.get(`drilling.${index + 1}.penetration-rate`) ?? null;
    const [top, bottom] = [topOf(drilled), bottomOf(drilled)];
    return rate === null || rate <= 0 || top === null || bottom === null ? [] : [{ drilled, top, bottom, rate }];
  });
}

const sameWay = ({ drilled: a }: Rod, { drilled: b }: Rod): boolean =>
  a.flush.map(({ id }) => id).join() === b.flush.map(({ id }) => id).join() &&
  (a.bit?.value ?? null) === (b.bit?.value ?? null);

/** Rods that follow one another without a gap, drilled with one bit and one flush. */
const isOneRun = (rods: readonly Rod[]): boolean =>
  rods.every((rod, index) => {
    const above = rods[index - 1];
    return above === undefined || (Math.abs(above.bottom - rod.top) <= sameDepth && sameWay(above, rod));
  });

/** By how much the slower of two groups of rods is slower than the faster, and which one it is. */
function ratioOf(above: readonly Rod[], below: readonly Rod[]): { ratio: number; slower: boolean } {
  const rates = (rods: readonly Rod[]) => rods.map(({ rate }) => rate);
  const slowing = Math.min(...rates(above)) / Math.max(...rates(below));
  const gaining = Math.min(...rates(below)) / Math.max(...rates(above));
  return slowing > gaining ? { ratio: slowing, slower: true } : { ratio: gaining, slower: false };
}

const hasContact = (strata: readonly Stratum[], from: number, to: number): boolean =>
  strata.some((each) => {
    const contact = bottomOf(each);
    return contact !== null && contact >= from - sameDepth && contact <= to + sameDepth;
  });

function reportAt(rods: readonly Rod[], at: number, most: { ratio: number; rods: number }, context: RuleContext) {
  const above = rods.slice(at - most.rods, at);
  const below = rods.slice(at, at + most.rods);
  const [last, first] = [above.at(-1), below[0]];
  if (!last || !first || above.length < most.rods || below.length < most.rods) return null;
  const { ratio, slower } = ratioOf(above, below);
  if (ratio < most.ratio || !isOneRun([...above, ...below])) return null;
  if (hasContact(context.log.strata, last.top, first.bottom)) return null;
  return breakReport(first, numberText(ratio, 2), slower, context);
}

const slowerWords = (ratio: string, depth: string, least: string, rods: string): string =>
  l10n.t(
    'drilling goes {0} times slower below {1} than above, with the same bit and flush, and no contact is logged near it (looked for: {2} over {3}); did the ground change there?',
    ratio,
    depth,
    least,
    rods,
  );

const fasterWords: typeof slowerWords = (ratio, depth, least, rods) =>
  l10n.t(
    'drilling goes {0} times faster below {1} than above, with the same bit and flush, and no contact is logged near it (looked for: {2} over {3}); did the ground change there?',
    ratio,
    depth,
    least,
    rods,
  );

const breakReport = ({ drilled, top }: Rod, ratio: string, slower: boolean, context: RuleContext): Report => ({
  span: drilled.interval.span,
  message: (slower ? slowerWords : fasterWords)(
    ratio,
    depthText(top, context.log.units),
    limitText(context, 'rate-break-ratio-least'),
    limitText(context, 'rate-break-rods-least'),
  ),
  limit: 'rate-break-ratio-least',
});

/** A break in the rate of penetration where no contact is logged. */
export const rule: Rule = {
  id: 'rate-break',
  severity: 'information',
  title: 'A break in the rate of drilling without a contact',
  why: 'The bit feels the ground before the cuttings come up: a lasting change of rate with one bit and one flush often marks a contact.',
  mend: 'Log the contact where there was one; else say in a remark what changed.',
  source: 'common practice, no source',
  crew: 'Did the ground change there?',
  unfixed: 'The ground is described by those who saw it; the rate alone tells no contact.',
  flagged: [
    {
      text: 'strata\n  0 - 61 limestone\ndrilling\n  0 - 6 10 min air\n  - 12 11 min air\n  [[- 18]] 30 min air\n  - 24 32 min air',
    },
  ],
  silent: [
    {
      text: 'strata\n  0 - 12.5 shale\n  - 61 limestone\ndrilling\n  0 - 6 10 min air\n  - 12 11 min air\n  - 18 30 min air\n  - 24 32 min air',
    },
    {
      text: 'strata\n  0 - 61 limestone\ndrilling\n  0 - 6 10 min air\n  - 12 11 min air\n  - 18 30 min foam\n  - 24 32 min foam',
    },
    { text: 'strata\n  0 - 61 limestone\ndrilling\n  0 - 6 10 min air\n  - 12 11 min air\n  - 18 30 min air' },
  ],
  check: (context) => {
    const { 'rate-break-ratio-least': ratio, 'rate-break-rods-least': count } = context.limits;
    if (!ratio || !count || context.log.strata.length === 0) return [];
    const rods = rodsOf(context);
    const most = { ratio: ratio.value, rods: count.value };
    return rods.flatMap((_, at) => reportAt(rods, at, most, context) ?? []);
  },
};
