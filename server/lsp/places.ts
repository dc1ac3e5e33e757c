import { type Diagnostic, DiagnosticSeverity, type Position, type Range } from 'vscode-languageserver';
import type { CheckedFile } from './folder-files.ts';

/** The place of an offset in a text. */
export function positionAt(text: string, offset: number): Position {
  const lines = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: lines.length - 1, character: (lines.at(-1) ?? '').length };
}

/** From the fault to the end of the word, value or line that it begins. */
const faulty = /"(?:[^"\\\r\n]|\\.)*"|[-+.\w]+|[^\r\n]?/y;

function rangeAt(text: string, offset: number): Range {
  faulty.lastIndex = offset;
  const length = faulty.exec(text)?.[0].length ?? 0;
  return { start: positionAt(text, offset), end: positionAt(text, offset + length) };
}

/** What is wrong in a settings or pack file, as the editor shows it. */
export const diagnosticsOfFile = ({ text, problems, isUsable }: CheckedFile): Diagnostic[] =>
  problems.map(({ offset, message }) => ({
    range: rangeAt(text, offset),
    severity: isUsable ? DiagnosticSeverity.Warning : DiagnosticSeverity.Error,
    source: 'drillhand',
    message,
  }));
