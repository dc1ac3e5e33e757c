import * as l10n from '@vscode/l10n';
import { spanAt } from '../../../grammar/span.ts';
import { units } from '../../../grammar/units.ts';
import { overwrite } from '../fixes.ts';
import { didYouMean } from '../messages.ts';
import { nearNames } from '../near-names.ts';
import { ofProblem, type ProblemOnLine } from '../of-problem.ts';
import type { Rule } from '../rule.ts';

const unknownText = ({ written, facts: { number } }: ProblemOnLine): string =>
  number
    ? l10n.t('"{0}" after {1} is no unit known here', written, number)
    : l10n.t('"{0}" after the number is no unit known here', written);

const spellings = units.map(({ id }) => id);

/** A word glued to a number that is no unit. */
export const rule: Rule = {
  id: 'unknown-unit',
  severity: 'error',
  title: 'A unit that is not known',
  why: 'Without its unit the number means nothing, and is read as if it had none.',
  mend: 'Correct the unit.',
  source: 'the table of units',
  flagged: [{ text: 'casing +0.45 - 7.2 steel 168.3[[mn]]', fixed: 'casing +0.45 - 7.2 steel 168.3in' }],
  silent: [{ text: 'casing +0.45 - 7.2 steel 168.3mm' }],
  check: ofProblem('unknown-unit', {
    message: (problem) => `${unknownText(problem)}${didYouMean(nearNames(problem.written, spellings))}`,
    fixes: (problem) =>
      nearNames(problem.written, spellings).map((unit) => overwrite(spanAt(problem.line, problem), unit)),
  }),
};
