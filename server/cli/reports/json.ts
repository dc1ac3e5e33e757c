import type { Span } from '../../../grammar/span.ts';
import type { Finding } from '../../rules/rule.ts';
import type { FileFindings } from './report.ts';

/** Positions from 0, in UTF-16 units, as in the language server protocol. */
const rangeOf = ({ line, start, end }: Span) => ({
  start: { line, character: start },
  end: { line, character: end },
});

const findingJson = ({ rule, severity, message, span, related = [] }: Finding) => ({
  rule,
  severity,
  message,
  range: rangeOf(span),
  related: related.map((each) => ({
    message: each.message,
    ...(each.file !== undefined && { file: each.file }),
    range: rangeOf(each.span),
  })),
});

/** The findings as a JSON list, one entry a file. */
export const jsonReport = (files: readonly FileFindings[]): string =>
  `${JSON.stringify(
    files.map(({ file, findings }) => ({ file, findings: findings.map(findingJson) })),
    null,
    2,
  )}\n`;
