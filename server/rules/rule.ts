import type { Span } from '../../grammar/span.ts';
import type { Problem, ProblemCode, Tree } from '../../grammar/tree.ts';
import type { Measure, Moment, WellLog } from '../model/log.ts';
import type { Limits, Pack } from '../packs/limits.ts';
import type { OwnPacks } from '../packs/own-packs.ts';
import type { Record as WellRecord } from '../record/record.ts';

export type Severity = 'error' | 'warning' | 'information' | 'hint';

export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** A change that mends a finding. `safe` ones may be made without a look (spelling, order of words, units written out). */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
  readonly preferred: boolean;
  readonly safe: boolean;
}

export interface Related {
  /** The file that it stands in, where that is another than the finding's. */
  readonly file?: string;
  readonly message: string;
  readonly span: Span;
}

/** What a rule reports; severity and id are added by the engine. */
export interface Report {
  readonly span: Span;
  readonly message: string;
  readonly related?: readonly Related[];
  /** Called only when someone asks for the fixes. */
  readonly fixes?: () => readonly Fix[];
  /** Overrides the rule's default where the fault has degrees (volume short of annulus / short of allowance). */
  readonly severity?: Severity;
  /** The pack limit it rests on, if any: shown in hover, and as the link. */
  readonly limit?: string;
  /**
   * Values of which one must be wrong. The engine offers to mark each with a `?`, and drops the report once one is
   * marked: it is then a question for the crew.
   */
  readonly doubts?: readonly (Measure | Moment | null | undefined)[];
}

export interface Finding extends Report {
  readonly rule: string;
  readonly severity: Severity;
  /** What the crew is asked of it; null where it is settled at the desk. */
  readonly crew?: string | null;
}

/** Everything a rule may look at. The record is computed when it is first asked for. */
export interface RuleContext {
  readonly tree: Tree;
  readonly log: WellLog;
  readonly record: WellRecord;
  readonly limits: Limits;
  /** Problems of the grammar by code, each with its line number. */
  problems(code: ProblemCode): readonly (Problem & { readonly line: number })[];
  /** Numbers of the lines that a row of the table reads; the lines of strata, by far the most, are left out. */
  readonly linesBesideStrata: readonly number[];
  /** Today as YYYY-MM-DD; null where nobody said. */
  readonly today: string | null;
  /** Packs of the workspace, those that could not be read too. */
  readonly ownPacks: OwnPacks;
}

/** A rule named in an `# allow`, with what came of it. */
export interface AllowUse {
  /** Where the name stands. */
  readonly span: Span;
  readonly id: string;
  readonly known: boolean;
  /** True where the rule is switched off, so that the allow could not silence anything. */
  readonly off: boolean;
  readonly silenced: number;
}

/**
 * An example that is run: notation text. In `flagged` every stretch between `[[` and `]]` is a finding of this rule,
 * and there are no others of it. `fixed`, where given, is the text after the first finding's preferred fix, else its first.
 * Examples are read on 2026-12-31, against the packs that they name.
 */
export interface Example {
  readonly text: string;
  readonly fixed?: string;
  /** A pack of the workspace that the text names, where no pack of the program has such a limit. */
  readonly own?: Pack;
}

/** What a rule says of itself. */
export interface RuleWords {
  /** Kebab-case; names the fault. */
  readonly id: string;
  readonly severity: Severity;
  /** Off until switched on. */
  readonly off?: boolean;
  readonly title: string;
  /** Why it matters, in a sentence or two. */
  readonly why: string;
  /** How to mend it. */
  readonly mend: string;
  readonly source: string;
  /** For what only those who were at the well can settle: the question to ask them, in plain words. */
  readonly crew?: string;
  /** Why no fix would be honest; left out where a fix is offered. */
  readonly unfixed?: string;
}

export interface Rule extends RuleWords {
  readonly flagged: readonly Example[];
  readonly silent: readonly Example[];
  check(context: RuleContext): Iterable<Report>;
  /** For rules about allows only: looks at what the allows silenced, once the other rules have run. */
  checkAllows?(uses: readonly AllowUse[], ruleIds: readonly string[]): Iterable<Report>;
}
