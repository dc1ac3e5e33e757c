import * as l10n from '@vscode/l10n';
import type { Tree } from '../../../grammar/tree.ts';
import type { WellLog } from '../../model/log.ts';
import { bottomOf, type ColumnFaults, columnFaults, columnText, topOf } from '../columns.ts';
import { contactBetween, fix, lineBefore, moveDepth } from '../fixes.ts';
import { depthText, intervalText, stretchText } from '../messages.ts';
import type { Fix, Report, Rule, RuleContext } from '../rule.ts';

type Gap = ColumnFaults['gaps'][number];

/** A line `- 4.1 ?` above this one; it takes its top from the line before. */
function unknownLine({ column, upper, lower }: Gap, { lines }: Tree): Fix[] {
  const { top } = lower.interval;
  if (column !== 'strata' || top?.span.line !== lower.line) return [];
  const added = `${upper ? '' : '0 '}- ${top.written}  ?`;
  const edit = lineBefore(lower.line, lines[lower.line]?.text ?? '', added);
  return [fix(l10n.t('Log the gap as unknown: {0}', added.replace(/\s+/g, ' ')), [edit])];
}

const fixesOf = (gap: Gap, tree: Tree): Fix[] => [
  ...moveDepth(
    (depth) => l10n.t('Begin this line at the base of the line above: {0}', depth),
    gap.lower.line,
    gap.lower.interval.top,
    gap.upper?.interval.bottom ?? null,
    true,
  ),
  ...(gap.upper
    ? moveDepth(
        (depth) => l10n.t('End the line above where this one begins: {0}', depth),
        gap.upper.line,
        gap.upper.interval.bottom,
        gap.lower.interval.top,
      )
    : []),
  ...(gap.upper && gap.column === 'strata' ? contactBetween(gap.upper, gap.lower) : []),
  ...unknownLine(gap, tree),
];

function messageOf({ column, upper, lower }: Gap, from: number | null, { units }: WellLog): string {
  const gap = stretchText(from, topOf(lower), units);
  const below = intervalText(lower.interval, units);
  return upper
    ? l10n.t(
        '{0} says nothing of {1}, between {2} and {3}; move the contact, or add a line for what is missing',
        columnText(column),
        gap,
        intervalText(upper.interval, units),
        below,
      )
    : l10n.t(
        '{0} says nothing of {1}, between the surface and {2}; move the contact, or add a line for what is missing',
        columnText(column),
        gap,
        below,
      );
}

function reportOf(gap: Gap, { log, tree }: RuleContext): Report {
  const { upper, lower } = gap;
  const from = upper ? bottomOf(upper) : 0;
  const base = upper && {
    span: upper.interval.span,
    message: l10n.t('this ends at {0}', depthText(from ?? 0, log.units)),
  };
  return {
    span: lower.interval.span,
    message: messageOf(gap, from, log),
    related: base ? [base] : [],
    fixes: () => fixesOf(gap, tree),
  };
}

/** Depths between two lines of `hole` or `strata` of which neither speaks. */
export const rule: Rule = {
  id: 'interval-gap',
  severity: 'warning',
  title: 'Depths of the hole or the strata that no line covers',
  why: 'A gap is a stretch of ground that nobody described, or a slip of the pen in a contact.',
  mend: 'Move the contact, add the missing line, or add a line with `?` for ground that nobody saw.',
  source: 'geometry',
  crew: 'What was met there, and where is the contact?',
  flagged: [
    {
      text: 'strata\n  0 - 3.8 clay\n  [[4.1 - 6.1]] sand',
      fixed: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand',
    },
    { text: 'hole\n  [[7.2 - 61]] 152' },
  ],
  silent: [
    { text: 'strata\n  0 - 3.8 clay\n  - 6.1 sand' },
    { text: 'existing 0 - 36.6 152, 1987\nhole\n  36.6 - 61 152\nstrata\n  36.6 - 61 granite' },
    { text: 'drilling\n  7.2 - 13.2 18 min\n  19.2 - 25.2 9 min' },
    { text: 'strata\n  0 - ? clay\n  6 - 12 sand' },
  ],
  check: (context) => columnFaults(context.log).gaps.map((gap) => reportOf(gap, context)),
};
