import { spanAt } from '../../grammar/span.ts';
import type { Problem, ProblemCode } from '../../grammar/tree.ts';
import { keepAsRemark, overwrite } from './fixes.ts';
import { shortened } from './messages.ts';
import type { Fix, Report, Rule, RuleContext, Severity } from './rule.ts';

export type ProblemOnLine = Problem & { readonly line: number };

export interface Wording {
  readonly message: (problem: ProblemOnLine) => string;
  /** In place of the rule's own, where a problem weighs more. */
  readonly severity?: (problem: ProblemOnLine) => Severity | null;
  /** True where the first of what was probably meant may be written without a look. */
  readonly safe?: boolean;
  /** In place of "write what was meant"; `text` is the line. */
  readonly fixes?: (problem: ProblemOnLine, text: string) => readonly Fix[];
}

/** A fix for each thing that was probably meant, the likeliest preferred. */
export const fixesOfMeant = ({ meant, line, start, end }: ProblemOnLine, safe = false): readonly Fix[] =>
  meant.map((text, index) =>
    overwrite(spanAt(line, { start, end }), text, { preferred: index === 0, safe: safe && meant.length === 1 }),
  );

/** Fixes for what was probably meant, and one that keeps what cannot be read as the line's remark. */
export const meantOrRemark = (problem: ProblemOnLine, text: string): readonly Fix[] => [
  ...fixesOfMeant(problem),
  ...keepAsRemark(spanAt(problem.line, problem), text),
];

/** The problem with what the log says in it cut to a length that a message can show. */
const shown = (problem: ProblemOnLine): ProblemOnLine => ({
  ...problem,
  written: shortened(problem.written),
  meant: problem.meant.map(shortened),
  facts: Object.fromEntries(
    Object.entries(problem.facts).map(([name, fact]) => [name, name === 'doc' ? fact : shortened(fact)]),
  ),
});

function reportOf(problem: ProblemOnLine, { message, severity, safe, fixes }: Wording, { tree }: RuleContext): Report {
  const weight = severity?.(problem) ?? null;
  return {
    span: spanAt(problem.line, problem),
    message: message(shown(problem)),
    ...(weight && { severity: weight }),
    fixes: () => fixes?.(problem, tree.lines[problem.line]?.text ?? '') ?? fixesOfMeant(problem, safe),
  };
}

/** The check of a rule that puts one code of the grammar's problems into words. */
export const ofProblem =
  (code: ProblemCode, wording: Wording): Rule['check'] =>
  (context) =>
    context.problems(code).map((problem) => reportOf(problem, wording, context));
