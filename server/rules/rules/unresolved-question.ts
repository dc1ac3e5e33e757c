import type { WellLog } from '../../model/log.ts';
import type { Report, Rule } from '../rule.ts';

type Question = WellLog['questions'][number];

/** `water, depth` for `water: depth`. */
const inWords = (what: string): string => what.replace(': ', ', ');

const reportOf = ({ span, what, kind }: Question): Report[] => {
  if (kind === 'approximate') return [];
  return kind === 'unknown'
    ? [{ span, message: `${inWords(what)}: not known; ask the crew, and write it in place of the ?` }]
    : [
        {
          span,
          severity: 'hint',
          message: `${inWords(what)}: marked as doubtful; confirm it with the crew, and take off the ?`,
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
