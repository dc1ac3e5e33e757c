import type { Depth, Interval, WellLog } from '../../model/log.ts';
import type { Report, Rule } from '../rule.ts';

const systems: Readonly<Record<string, string>> = {
  m: 'metric',
  cm: 'metric',
  mm: 'metric',
  ft: 'feet and inches',
  in: 'feet and inches',
};

const systemOf = ({ unit }: Depth): string => systems[unit] ?? unit;

function reportOf(column: string, intervals: readonly Interval[], { units }: WellLog): Report[] {
  const own = systems[units.depth];
  const other = intervals.find(({ bottom }) => bottom?.unitWritten && systemOf(bottom) !== own);
  const usual = intervals.find(({ bottom }) => bottom && bottom.value !== null && systemOf(bottom) === own);
  if (!other?.bottom || !usual) return [];
  return [
    {
      span: other.bottom.span,
      message: `${column} is written in ${units.depth}, and here in ${other.bottom.unit}: both are read as they stand; make sure that each depth has its own unit`,
      related: [{ span: usual.span, message: `in ${units.depth}` }],
    },
  ];
}

/** A column of depths in two systems of units. */
export const rule: Rule = {
  id: 'mixed-units',
  severity: 'hint',
  title: 'A column of depths in two systems of units',
  why: 'Metres and feet in one column are often two hands, or two tapes; a bare number may have been meant in the other.',
  mend: 'Make sure that each depth has the unit it was measured in. Nothing needs to be changed where that is so.',
  source: 'common practice, no source',
  flagged: [{ text: 'strata\n  0 - 3.8 clay\n  3.8 - [[20 ft]] sand\n  - 44.2 limestone' }],
  silent: [{ text: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand' }, { text: 'strata\n  0 - 12 ft clay' }],
  check: ({ log }) => [
    ...reportOf(
      'strata',
      log.strata.map(({ interval }) => interval),
      log,
    ),
    ...reportOf(
      'hole',
      log.hole.map(({ interval }) => interval),
      log,
    ),
  ],
};
