import * as l10n from '@vscode/l10n';
import type { WellLog } from '../../model/log.ts';
import { columnFaults, columnText, type Pair } from '../columns.ts';
import { intervalText } from '../messages.ts';
import type { Report, Rule } from '../rule.ts';

const reportOf = ({ column, upper, lower }: Pair, { units }: WellLog): Report => ({
  span: lower.interval.span,
  doubts: [lower.interval.bottom, upper.interval.top],
  message: l10n.t(
    '{0} goes back up: {1} stands below {2}; write the lines from the surface down, or correct the depths',
    columnText(column),
    intervalText(lower.interval, units),
    intervalText(upper.interval, units),
  ),
  related: [{ span: upper.interval.span, message: l10n.t('this line is deeper, and stands above it') }],
});

/** A line of a column that lies wholly above the line before it. */
export const rule: Rule = {
  id: 'not-deepening',
  severity: 'error',
  title: 'A line that is shallower than the line above it',
  why: 'A column is read from the surface down. A line that goes back up is out of its place or has a wrong depth, and a line after it that begins with a dash takes a wrong top.',
  mend: 'Put the lines in the order of their depths, or correct the depth.',
  source: 'geometry',
  crew: 'What are the depths of these two lines?',
  flagged: [
    { text: 'strata\n  3.8 - 6.1 sand\n  [[0 - 3.8]] clay', fixed: 'strata\n  3.8 - 6.1 sand\n  0 - 3.8? clay' },
    { text: 'strata\n  0 - 3.8 clay\n  38 - 61 limestone\n  [[6.1 - 38]] sand' },
  ],
  silent: [{ text: 'strata\n  0 - 3.8 clay\n  3.8 - 6.1 sand' }],
  check: ({ log }) => columnFaults(log).notDeepening.map((pair) => reportOf(pair, log)),
};
