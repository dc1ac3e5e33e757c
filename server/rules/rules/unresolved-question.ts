import * as l10n from '@vscode/l10n';
import type { WellLog } from '../../model/log.ts';
import type { Report, Rule } from '../rule.ts';

type Question = WellLog['questions'][number];

/** The keyword, and the fact that is open: `water` and `depth` of `water: depth`. */
function partsOf(what: string): [string, string] {
  const at = what.indexOf(': ');
  return [what.slice(0, at), l10n.t(what.slice(at + 2))];
}

const reportOf = ({ span, what, kind }: Question): Report[] => {
  if (kind === 'approximate') return [];
  const [keyword, fact] = partsOf(what);
  return kind === 'unknown'
    ? [{ span, message: l10n.t('{0}, {1}: not known; ask the crew, and write it in place of the ?', keyword, fact) }]
    : [
        {
          span,
          severity: 'hint',
          message: l10n.t('{0}, {1}: marked as doubtful; confirm it with the crew, and take off the ?', keyword, fact),
        },
      ];
};

/** A `?` that nobody has answered. */
export const rule: Rule = {
  id: 'unresolved-question',
  severity: 'information',
  title: 'A question that nobody has answered',
  why: 'All the `?` of a log are its list of questions for the crew. What waits for one is not computed.',
  mend: 'Ask, and write the answer in place of the `?`. Nothing is filled in for you.',
  source: 'the notation',
  unfixed: 'The answer is known only to the crew.',
  flagged: [
    { text: 'casing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, [[? m3]]' },
    { text: 'water\n  [[38.5?]] fresh, 25 L/min' },
  ],
  silent: [{ text: 'strata\n  0 - ~3.8 clay' }],
  check: ({ log }) => log.questions.flatMap(reportOf),
};
