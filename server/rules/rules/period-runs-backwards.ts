import * as l10n from '@vscode/l10n';
import type { Period, WellLog } from '../../model/log.ts';
import type { Report, Rule } from '../rule.ts';

const periodsOf = (log: WellLog): Period[] =>
  [
    ...log.shifts.map(({ hours }) => hours),
    ...log.drilling.flatMap((each) => each.intervals.map(({ when }) => when)),
    ...log.strings.flatMap((string) => string.fills.map(({ placed }) => placed)),
    ...log.tests.map(({ start }) => start),
  ].filter((period) => period !== null);

/** `2026-05-05 07:00`, or null where a date or a time is missing or no calendar has it. */
const clockOf = (moment: Period['from']): string | null =>
  moment?.date && moment.time && moment.valid ? `${moment.date} ${moment.time}` : null;

function reportOf({ from, to, span }: Period): Report[] {
  const [begin, end] = [clockOf(from), clockOf(to)];
  if (begin === null || end === null || end > begin) return [];
  return [
    {
      span,
      doubts: [from, to],
      message:
        end === begin
          ? l10n.t('this runs from {0} to {1}, which is no time at all; correct a date or a time', begin, end)
          : l10n.t('this runs from {0} to {1}, backwards; correct a date or a time', begin, end),
    },
  ];
}

/** A period that ends before it begins. */
export const rule: Rule = {
  id: 'period-runs-backwards',
  severity: 'error',
  title: 'A period that ends before it begins',
  why: 'Set time and pumping time are counted from these times.',
  mend: 'Correct a date or a time. An end written as a time alone is taken for the next day where it is earlier than the beginning.',
  source: 'the clock',
  crew: 'When did it begin, and when did it end?',
  flagged: [
    {
      text: 'shift [[2026-05-05 17:30 - 2026-05-05 07:00]], 0 - 42.7',
      fixed: 'shift 2026-05-05 17:30? - 2026-05-05 07:00, 0 - 42.7',
    },
  ],
  silent: [{ text: 'shift 2026-05-05 07:00 - 17:30, 0 - 42.7' }, { text: 'shift 2026-05-05 19:00 - 05:30, 0 - 42.7' }],
  check: ({ log }) => periodsOf(log).flatMap(reportOf),
};
