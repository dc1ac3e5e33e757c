import type { Finding } from '../../rules/rule.ts';

/** What was found in one file. */
export interface FileFindings {
  readonly file: string;
  readonly lines: readonly string[];
  readonly findings: readonly Finding[];
}
