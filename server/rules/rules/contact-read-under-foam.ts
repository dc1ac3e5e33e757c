import * as l10n from '@vscode/l10n';
import type { DrilledInterval, Stratum } from '../../model/log.ts';
import { bottomOf, topOf } from '../columns.ts';
import { depthText } from '../messages.ts';
import type { Report, Rule, RuleContext } from '../rule.ts';

const wet = new Set(['air-water', 'foam']);

const wetFlush = (drilled: DrilledInterval): string | null => drilled.flush.find(({ id }) => wet.has(id))?.name ?? null;

/** The drilled interval in which a depth lies, both read from the surface down. */
function drilledAt(drilled: readonly DrilledInterval[], depth: number): DrilledInterval | null {
  return (
    drilled.find((each) => (topOf(each) ?? Number.POSITIVE_INFINITY) < depth && (bottomOf(each) ?? -1) >= depth) ?? null
  );
}

const isSampled = (depth: number, { log }: RuleContext): boolean =>
  log.drilling.some((each) =>
    each.samples.some((samples) => (topOf(samples) ?? 1e9) <= depth && (bottomOf(samples) ?? -1) >= depth),
  );

function reportOf(stratum: Stratum, flush: string, { log }: RuleContext): Report {
  const top = depthText(topOf(stratum) ?? 0, log.units);
  return {
    span: stratum.interval.span,
    message: l10n.t(
      'the contact at {0} was read under {1}, which masks the cuttings; say in a remark how it was seen, or log the samples',
      top,
      flush,
    ),
  };
}

/** A contact read while water or foam masked the cuttings. */
export const rule: Rule = {
  id: 'contact-read-under-foam',
  severity: 'hint',
  off: true,
  title: 'A contact read under water or foam without a word on the sample',
  why: 'Water in the air masks the cuttings, and foam must break before they can be read: such a contact is less certain.',
  mend: 'Say in a remark how the contact was seen, or log the `samples`.',
  source: 'common practice, no source',
  crew: 'How was this contact seen?',
  unfixed: 'How a contact was seen is known only to those who saw it.',
  flagged: [
    { text: 'strata\n  0 - 20 shale\n  [[- 61]] limestone\ndrilling\n  0 - 18 30 min air\n  - 24 12 min foam' },
  ],
  silent: [
    {
      text: 'strata\n  0 - 20 shale\n  - 61 limestone ; rig felt it\ndrilling\n  0 - 18 30 min air\n  - 24 12 min foam',
    },
    { text: 'strata\n  0 - 17 shale\n  - 61 limestone\ndrilling\n  0 - 18 30 min air\n  - 24 12 min foam' },
  ],
  check: function* (context) {
    const drilled = context.log.drilling.flatMap((each) => each.intervals).filter((each) => wetFlush(each) !== null);
    if (drilled.length === 0) return;
    for (const stratum of context.log.strata) {
      const top = topOf(stratum);
      if (top === null || top <= 0 || stratum.remark !== null || isSampled(top, context)) continue;
      const interval = drilledAt(drilled, top);
      if (interval) yield reportOf(stratum, wetFlush(interval) ?? 'foam', context);
    }
  },
};
