import type { Span } from '../../../grammar/span.ts';
import type { Finding, Related, Severity } from '../../rules/rule.ts';
import { printable } from '../printable.ts';
import { countText } from '../severity.ts';
import type { FileFindings } from './report.ts';

const widest = 100;
const before = 40;
const cutMark = '…';

const colours: Readonly<{ [severity in Severity]: number }> = { error: 31, warning: 33, information: 36, hint: 35 };

const coloured = (text: string, code: number, colour: boolean): string =>
  colour ? `\u001b[${code}m${text}\u001b[0m` : text;

/** The part of a line around a stretch, and where that stretch stands in it. */
function cut(line: string, { start, end }: Span): { text: string; start: number; end: number } {
  if (line.length <= widest) return { text: line, start, end };
  const from = Math.max(0, Math.min(start - before, line.length - widest));
  const to = from + widest;
  const [head, tail] = [from > 0 ? cutMark : '', to < line.length ? cutMark : ''];
  const text = `${head}${line.slice(from, to)}${tail}`;
  return { text, start: start - from + head.length, end: Math.min(end, to) - from + head.length };
}

function sourceLines(lines: readonly string[], span: Span): string[] {
  const shown = cut(lines[span.line] ?? '', span);
  const number = String(span.line + 1).padStart(5);
  const caret = `${' '.repeat(shown.start)}${'^'.repeat(Math.max(1, shown.end - shown.start))}`;
  return [`${number} | ${printable(shown.text)}`.trimEnd(), `${' '.repeat(number.length)} | ${caret}`];
}

const placeText = (file: string, { line, start }: Span): string => `${printable(file)}:${line + 1}:${start + 1}`;

const relatedLine = (file: string, { message, span, file: other }: Related): string =>
  `      = ${placeText(other ?? file, span)}: ${printable(message)}`;

function findingLines({ file, lines }: FileFindings, finding: Finding, colour: boolean): string[] {
  const severity = coloured(finding.severity, colours[finding.severity], colour);
  return [
    `${placeText(file, finding.span)}: ${severity} ${finding.rule}: ${printable(finding.message)}`,
    ...sourceLines(lines, finding.span),
    ...(finding.related ?? []).map((each) => relatedLine(file, each)),
    '',
  ];
}

/** What was found in one file, for people; empty where nothing was. */
export const textReport = (found: FileFindings, colour: boolean): string =>
  found.findings
    .flatMap((each) => findingLines(found, each, colour))
    .map((line) => `${line}\n`)
    .join('');

/** The closing line. */
export const closingLine = (files: readonly FileFindings[]): string =>
  `${countText(files.flatMap(({ findings }) => findings))} in ${files.length} ${files.length === 1 ? 'file' : 'files'}\n`;
