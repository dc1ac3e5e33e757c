import type { Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import type { OwnPacks } from '../packs/own-packs.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { Finding, Severity } from '../rules/rule.ts';

/** What settings say of the checks; nothing else from outside reaches the analysis. */
export interface Settings {
  /** Packs to check against beside those the file names. */
  readonly packs: readonly string[];
  readonly severities: Readonly<{ [rule: string]: Severity | 'off' }>;
  /** Today as YYYY-MM-DD; null where nobody said. */
  readonly today: string | null;
  /** Packs of the workspace, which logs and settings may name; none where left out. */
  readonly own?: OwnPacks;
}

/** One version of one document, with all that is known of it. Log, limits, record and findings are computed when first asked for. */
export interface Snapshot {
  readonly version: number;
  readonly lines: readonly string[];
  readonly tree: Tree;
  readonly log: WellLog;
  /** The limits in force, with the packs that they come from; `clauseAt` finds what a finding rests on. */
  readonly limits: Limits;
  readonly ownPacks: OwnPacks;
  readonly record: WellRecord;
  readonly findings: readonly Finding[];
}
