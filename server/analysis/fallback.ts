import type { Line, Tree } from '../../grammar/tree.ts';
import { blankLog, defaultUnits } from '../model/index.ts';
import type { WellLog } from '../model/log.ts';
import type { Record as WellRecord } from '../record/record.ts';
import { internalError } from '../rules/engine.ts';
import type { Finding } from '../rules/rule.ts';

const unreadLine = (text: string): Line => ({
  text,
  row: null,
  section: null,
  keyword: null,
  depths: null,
  items: [],
  remark: null,
  comment: null,
  allow: null,
  problems: [],
});

/** What stands in for a stage that failed: nothing is known of the log. */
export const unreadTree = (lines: readonly string[]): Tree => ({ lines: lines.map(unreadLine) });

export const unknownLog = (): WellLog => blankLog(defaultUnits);

export const emptyRecord = (log: WellLog): WellRecord => ({
  log,
  figures: [],
  fills: [],
  centralizerGaps: [],
  topOfCasing: null,
  depth: null,
  due: [],
  tests: [],
});

/** The finding that stands for a fault in the program itself. */
export const failureOf = (stage: string, error: unknown): Finding => ({
  rule: internalError,
  severity: 'warning',
  span: { line: 0, start: 0, end: 0 },
  message: `${stage} failed: ${error instanceof Error ? error.message : String(error)}; what needs it is missing here, the rest was checked`,
});
