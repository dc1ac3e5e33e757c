import type { Problem, ProblemCode, Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { RuleContext } from './rule.ts';

type ProblemOnLine = Problem & { readonly line: number };

function problemsByCode({ lines }: Tree): Map<ProblemCode, ProblemOnLine[]> {
  const byCode = new Map<ProblemCode, ProblemOnLine[]>();
  lines.forEach(({ problems }, line) => {
    for (const problem of problems) {
      const known = byCode.get(problem.code);
      if (known) known.push({ ...problem, line });
      else byCode.set(problem.code, [{ ...problem, line }]);
    }
  });
  return byCode;
}

export interface ContextParts {
  readonly tree: Tree;
  readonly log: WellLog;
  /** Called at most once, by the first rule that looks at the record. */
  readonly record: () => WellRecord;
  readonly limits: Limits;
  readonly today: string | null;
}

/** What the rules look at, for one version of one file. */
export function ruleContext({ tree, log, record, limits, today }: ContextParts): RuleContext {
  let byCode: Map<ProblemCode, ProblemOnLine[]> | null = null;
  let computed: WellRecord | null = null;
  return {
    tree,
    log,
    limits,
    today,
    get record() {
      computed ??= record();
      return computed;
    },
    problems: (code) => {
      byCode ??= problemsByCode(tree);
      return byCode.get(code) ?? [];
    },
  };
}
