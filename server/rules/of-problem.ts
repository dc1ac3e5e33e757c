import { spanAt } from '../../grammar/span.ts';
import type { Problem, ProblemCode } from '../../grammar/tree.ts';
import { overwrite } from './fixes.ts';
import { shortened } from './messages.ts';
import type { Fix, Report, Rule } from './rule.ts';

export type ProblemOnLine = Problem & { readonly line: number };

export interface Wording {
  readonly message: (problem: ProblemOnLine) => string;
  /** True where the first of what was probably meant may be written without a look. */
  readonly safe?: boolean;
  /** In place of "write what was meant". */
  readonly fixes?: (problem: ProblemOnLine) => readonly Fix[];
}

/** A fix for each thing that was probably meant, the likeliest preferred. */
export const fixesOfMeant = ({ meant, line, start, end }: ProblemOnLine, safe = false): readonly Fix[] =>
  meant.map((text, index) =>
    overwrite(spanAt(line, { start, end }), text, { preferred: index === 0, safe: safe && meant.length === 1 }),
  );

/** The problem with what the log says in it cut to a length that a message can show. */
const shown = (problem: ProblemOnLine): ProblemOnLine => ({
  ...problem,
  written: shortened(problem.written),
  meant: problem.meant.map(shortened),
  facts: Object.fromEntries(Object.entries(problem.facts).map(([name, fact]) => [name, shortened(fact)])),
});

const reportOf = (problem: ProblemOnLine, { message, safe, fixes }: Wording): Report => ({
  span: spanAt(problem.line, problem),
  message: message(shown(problem)),
  fixes: () => fixes?.(problem) ?? fixesOfMeant(problem, safe),
});

/** The check of a rule that puts one code of the grammar's problems into words. */
export const ofProblem =
  (code: ProblemCode, wording: Wording): Rule['check'] =>
  ({ problems }) =>
    problems(code).map((problem) => reportOf(problem, wording));
