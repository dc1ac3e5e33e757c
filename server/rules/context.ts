import type { Problem, ProblemCode, Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import { noOwnPacks, type OwnPacks } from '../packs/own-packs.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { RuleContext } from './rule.ts';

type ProblemOnLine = Problem & { readonly line: number };

/** What one walk through the lines finds. */
interface Walked {
  readonly problems: Map<ProblemCode, ProblemOnLine[]>;
  readonly linesBesideStrata: number[];
}

function walk({ lines }: Tree): Walked {
  const problems = new Map<ProblemCode, ProblemOnLine[]>();
  const linesBesideStrata: number[] = [];
  for (let line = 0; line < lines.length; line++) {
    const read = lines[line];
    if (!read) continue;
    if (read.row !== null && read.row !== 'strata.line') linesBesideStrata.push(line);
    for (const problem of read.problems) {
      const known = problems.get(problem.code);
      if (known) known.push({ ...problem, line });
      else problems.set(problem.code, [{ ...problem, line }]);
    }
  }
  return { problems, linesBesideStrata };
}

export interface ContextParts {
  readonly tree: Tree;
  readonly log: WellLog;
  /** Called at most once, by the first rule that looks at the record. */
  readonly record: () => WellRecord;
  readonly limits: Limits;
  readonly today: string | null;
  /** Packs of the workspace; none where left out. */
  readonly ownPacks?: OwnPacks;
}

/** What the rules look at, for one version of one file. */
export function ruleContext({ tree, log, record, limits, today, ownPacks = noOwnPacks }: ContextParts): RuleContext {
  let walked: Walked | null = null;
  let computed: WellRecord | null = null;
  return {
    tree,
    log,
    limits,
    today,
    ownPacks,
    get record() {
      computed ??= record();
      return computed;
    },
    get linesBesideStrata() {
      walked ??= walk(tree);
      return walked.linesBesideStrata;
    },
    problems: (code) => {
      walked ??= walk(tree);
      return walked.problems.get(code) ?? [];
    },
  };
}
