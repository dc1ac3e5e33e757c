import * as l10n from '@vscode/l10n';
import type { Depth, WellLog } from '../../model/log.ts';
import { type ColumnName, columnText, type Entry } from '../columns.ts';
import { depthAs, fix } from '../fixes.ts';
import type { Fix, Report, Rule } from '../rule.ts';

const systems: Readonly<Record<string, string>> = {
  m: 'metric',
  cm: 'metric',
  mm: 'metric',
  ft: 'feet and inches',
  in: 'feet and inches',
};

const systemOf = ({ unit }: Depth): string => systems[unit] ?? unit;

/** The depths that are written in the other system, each where it stands, as they are in the file's own unit. */
function converted(entries: readonly Entry[], { units }: WellLog): Fix[] {
  const own = systems[units.depth];
  const others = entries.flatMap(({ line, interval: { top, bottom } }) =>
    [top, bottom].filter(
      (each) => each !== null && each.span.line === line && each.unitWritten && systemOf(each) !== own,
    ),
  );
  const edits = others.flatMap((each) =>
    each?.value == null || each.td
      ? []
      : [{ span: each.span, text: depthAs({ ...each, unit: units.depth, unitWritten: true }, each.value) }],
  );
  return edits.length < others.length ? [] : [fix(l10n.t('Write them in {0}', units.depth), edits)];
}

function reportOf(column: ColumnName, entries: readonly Entry[], log: WellLog): Report[] {
  const { units } = log;
  const own = systems[units.depth];
  const isOther = ({ interval: { bottom } }: Entry) => bottom?.unitWritten === true && systemOf(bottom) !== own;
  const other = entries.find(isOther)?.interval.bottom;
  const usual = entries.find(({ interval: { bottom } }) => bottom?.value != null && systemOf(bottom) === own);
  if (!other || !usual) return [];
  return [
    {
      span: other.span,
      fixes: () => converted(entries, log),
      message: l10n.t(
        '{0} is written in {1}, and here in {2}: both are read as they stand; make sure that each depth has its own unit',
        columnText(column),
        units.depth,
        other.unit,
      ),
      related: [{ span: usual.interval.span, message: l10n.t('in {0}', units.depth) }],
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
  flagged: [
    {
      text: 'strata\n  0 - 3.8 clay\n  3.8 - [[20 ft]] sand\n  - 44.2 limestone',
      fixed: 'strata\n  0 - 3.8 clay\n  1.158 m - 6.096 m sand\n  - 44.2 limestone',
    },
  ],
  silent: [{ text: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand' }, { text: 'strata\n  0 - 12 ft clay' }],
  check: ({ log }) => [...reportOf('strata', log.strata, log), ...reportOf('hole', log.hole, log)],
};
