import * as l10n from '@vscode/l10n';
import type { Tree } from '../../../grammar/tree.ts';
import type { Depth, HoleEntry } from '../../model/log.ts';
import { bottomOf, columnFaults, columnText, type Pair, sameDepth, topOf } from '../columns.ts';
import { contactBetween, fix, lineBefore, moveDepth, takenOver } from '../fixes.ts';
import { depthText, intervalText, stretchText } from '../messages.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

const isReamed = (entry: Partial<HoleEntry>): boolean =>
  Boolean(entry.reamedFrom) || (entry.methods ?? []).some(({ id }) => id.includes('ream'));

/** A hole that was reamed wider is logged over itself. */
const meantSo = ({ column, upper, lower }: Pair): boolean =>
  column === 'hole' && (isReamed(upper as Partial<HoleEntry>) || isReamed(lower as Partial<HoleEntry>));

/** The depth, where a line that ends at `bottom` could begin there. */
const asTopOf = (bottom: number | null, depth: Depth | null): Depth | null =>
  bottom === null || bottom > (depth?.value ?? 0) + sameDepth ? depth : null;

/** Ends the upper line where the lower begins, and leaves what both speak of to the crew; for strata. */
function unknownBetween({ column, upper, lower }: Pair, { lines }: Tree): Fix[] {
  const [base, top, foot] = [upper.interval.bottom, lower.interval.top, lower.interval.bottom];
  if (column !== 'strata' || base?.value == null || top?.value == null || foot?.value == null) return [];
  const standsAlone = base.span.line === upper.line && top.span.line === lower.line && lower.line === upper.line + 1;
  if (!standsAlone || foot.value <= base.value + sameDepth || top.value <= (topOf(upper) ?? 0) + sameDepth) return [];
  const added = `- ${base.written}  ?`;
  return [
    fix(l10n.t('Log the depths given twice as unknown: {0}', added.replace(/\s+/g, ' ')), [
      { span: base.span, text: takenOver(base, top) },
      lineBefore(lower.line, lines[lower.line]?.text ?? '', added),
      { span: top.span, text: takenOver(top, base) },
    ]),
  ];
}

/** True where the contact may stand between the two depths: each line goes on beyond both of them. */
const mayMeet = ({ column, upper, lower }: Pair): boolean =>
  column === 'strata' &&
  (topOf(upper) ?? Number.POSITIVE_INFINITY) < (topOf(lower) ?? 0) - sameDepth &&
  (bottomOf(lower) ?? 0) > (bottomOf(upper) ?? Number.POSITIVE_INFINITY) + sameDepth;

const fixesOf = (pair: Pair, tree: Tree): Fix[] => [
  ...movesOf(pair),
  ...(mayMeet(pair) ? contactBetween(pair.upper, pair.lower) : []),
  ...unknownBetween(pair, tree),
];

const movesOf = ({ upper, lower }: Pair): Fix[] => [
  ...moveDepth(
    (depth) => l10n.t('Begin this line at the base of the line above: {0}', depth),
    lower.line,
    lower.interval.top,
    asTopOf(bottomOf(lower), upper.interval.bottom),
    true,
  ),
  ...moveDepth(
    (depth) => l10n.t('End the line above where this one begins: {0}', depth),
    upper.line,
    upper.interval.bottom,
    lower.interval.top,
  ),
];

function reportOf(pair: Pair, { log: { units }, tree }: RuleContext): Report {
  const { column, upper, lower } = pair;
  const base = bottomOf(upper) ?? 0;
  const shared = stretchText(topOf(lower), Math.min(base, bottomOf(lower) ?? base), units);
  return {
    span: lower.interval.span,
    message: l10n.t(
      '{0} {1} begins above the base of {2}: {3} is logged twice; take one of the two depths for the contact',
      columnText(column),
      intervalText(lower.interval, units),
      intervalText(upper.interval, units),
      shared,
    ),
    related: [{ span: upper.interval.span, message: l10n.t('this reaches down to {0}', depthText(base, units)) }],
    fixes: () => fixesOf(pair, tree),
  };
}

/** Two lines of one column that speak of the same depths. */
export const rule: Rule = {
  id: 'interval-overlap',
  severity: 'error',
  title: 'Two lines of hole, strata or drilling cover the same depths',
  why: 'Where two lines cover the same depths nobody can tell later which of them holds, and volumes and columns are reckoned wrong.',
  mend: 'Move the contact to the upper or the lower of the two depths, as the notes say. In `hole`, say `reamed from` where a wider hole was drilled over a narrower one.',
  source: 'geometry',
  crew: 'At which depth does the one change into the other?',
  flagged: [
    {
      text: 'strata\n  0 - 3.8 clay\n  [[3.5 - 6.1]] sand',
      fixed: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
    },
    { text: 'units ft in\nhole\n  0 - 40 10\n  [[38 - 200]] 6' },
    { text: 'drilling\n  7.2 - 13.2 18 min\n  [[12 - 19.2]] 21 min' },
  ],
  silent: [
    { text: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand' },
    { text: 'hole\n  0 - 61 152\n  0 - 30 254 reamed from 152' },
    { text: 'strata\n  0 - 10 ft clay\n  3.048 - 6.1 sand' },
  ],
  check: (context) =>
    columnFaults(context.log)
      .overlaps.filter((pair) => !meantSo(pair))
      .map((pair) => reportOf(pair, context)),
};
