import type { Report, RuleWords } from '../rule.ts';
import type { FolderWell, Neighbour } from './well.ts';

/** The wells of a folder, as its rules see them. */
export interface FolderContext {
  readonly wells: readonly FolderWell[];
  /** Other wells within so many metres of a well, nearest first; none for a well without a place. */
  readonly near: (well: FolderWell, metres: number) => readonly Neighbour[];
}

/** What a rule says of one of the wells. */
export interface FolderReport extends Report {
  readonly file: string;
}

/** An example that is run: the texts of a folder by file name, what is reported marked as in the examples of other rules. */
export type FolderExample = Readonly<Record<string, string>>;

/** A rule that looks at the wells of a folder together. */
export interface FolderRule extends RuleWords {
  readonly flagged: readonly FolderExample[];
  readonly silent: readonly FolderExample[];
  check(context: FolderContext): Iterable<FolderReport>;
}
