import * as l10n from '@vscode/l10n';
import type { Interval, WellLog } from '../../model/log.ts';
import { columnFaults } from '../columns.ts';
import { exchangeEnds } from '../fixes.ts';
import { intervalText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const isReversed = ({ top, bottom }: Interval): boolean =>
  typeof top?.value === 'number' && typeof bottom?.value === 'number' && bottom.value <= top.value;

/** The intervals outside the columns: strings, what stands around them, and the rest of a log. */
const otherIntervals = (log: WellLog): Interval[] =>
  [
    ...log.strings.flatMap((string) => [
      string.interval,
      ...string.screens.map((screen) => screen.interval),
      ...string.fills.map((fill) => fill.interval),
      ...string.perforated,
    ]),
    ...log.abandonments.flatMap((each) => each.fills.map((fill) => fill.interval)),
    ...log.existing.map((each) => each.interval),
    ...log.hydrofractures.map((each) => each.interval),
    ...log.drilling.flatMap((each) => [...each.lost, ...each.samples].map(({ interval }) => interval)),
  ].filter((interval) => interval !== null);

const noLength = (stretch: string, continued: boolean): string =>
  continued
    ? l10n.t('{0} has no length: its top is the base of the line above; correct one of the two depths', stretch)
    : l10n.t('{0} has no length: the top is written first; exchange the two depths, or correct one of them', stretch);

const upwards = (stretch: string, continued: boolean): string =>
  continued
    ? l10n.t('{0} runs upwards: its top is the base of the line above; correct one of the two depths', stretch)
    : l10n.t('{0} runs upwards: the top is written first; exchange the two depths, or correct one of them', stretch);

function reportOf(interval: Interval, { tree, log }: RuleContext): Report {
  const level = interval.top?.value === interval.bottom?.value;
  return {
    span: interval.span,
    message: (level ? noLength : upwards)(intervalText(interval, log.units), interval.continued),
    fixes: () =>
      level || interval.continued ? [] : exchangeEnds(interval, tree.lines[interval.span.line]?.text ?? ''),
  };
}

/** An interval whose bottom is not below its top. */
export const rule: Rule = {
  id: 'interval-reversed',
  severity: 'error',
  title: 'An interval that ends above its top, or where it begins',
  why: 'An interval is written from its top to its bottom; the other way round its length, and every volume over it, is wrong.',
  mend: 'Exchange the two depths, or correct the one that is wrong. `+` marks a depth above ground.',
  source: 'geometry',
  crew: 'From what depth to what depth?',
  flagged: [
    { text: 'strata\n  0 - 3.8 clay\n  [[6.1 - 3.8]] sand', fixed: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand' },
    { text: 'casing [[7.2 - 0]] steel 168.3 x 6.4' },
    { text: 'strata\n  0 - 3.8 clay\n  [[- 3.1]] sand' },
  ],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3 x 6.4' }, { text: 'strata\n  0 - ? clay' }],
  check: (context) =>
    [
      ...columnFaults(context.log).reversed.map(({ entry }) => entry.interval),
      ...otherIntervals(context.log).filter(isReversed),
    ].map((interval) => reportOf(interval, context)),
};
