import type { Depth, WellLog } from '../../model/log.ts';
import type { Entry } from '../columns.ts';
import type { Report, Rule } from '../rule.ts';

const systems: Readonly<Record<string, string>> = {
  m: 'metric',
  cm: 'metric',
  mm: 'metric',
  ft: 'feet and inches',
  in: 'feet and inches',
};

const systemOf = ({ unit }: Depth): string => systems[unit] ?? unit;

function reportOf(column: string, entries: readonly Entry[], { units }: WellLog): Report[] {
  const own = systems[units.depth];
  const isOther = ({ interval: { bottom } }: Entry) => bottom?.unitWritten === true && systemOf(bottom) !== own;
  const other = entries.find(isOther)?.interval.bottom;
  const usual = entries.find(({ interval: { bottom } }) => bottom?.value != null && systemOf(bottom) === own);
  if (!other || !usual) return [];
  return [
    {
      span: other.span,
      message: `${column} is written in ${units.depth}, and here in ${other.unit}: both are read as they stand; make sure that each depth has its own unit`,
      related: [{ span: usual.interval.span, message: `in ${units.depth}` }],
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
  check: ({ log }) => [...reportOf('strata', log.strata, log), ...reportOf('hole', log.hole, log)],
};
