import type { Tree } from '../../grammar/tree.ts';
import type { WellLog } from '../model/log.ts';
import type { Record as WellRecord } from '../record/record.ts';
import type { Finding, Severity } from '../rules/rule.ts';

/** What settings say of the checks; nothing else from outside reaches the analysis. */
export interface Settings {
  /** Packs to check against beside those the file names. */
  readonly packs: readonly string[];
  readonly severities: Readonly<{ [rule: string]: Severity | 'off' }>;
  /** Today as YYYY-MM-DD; null where nobody said. */
  readonly today: string | null;
}

/** One version of one document, with all that is known of it. Log, record and findings are computed when first asked for. */
export interface Snapshot {
  readonly version: number;
  readonly lines: readonly string[];
  readonly tree: Tree;
  readonly log: WellLog;
  readonly record: WellRecord;
  readonly findings: readonly Finding[];
}
