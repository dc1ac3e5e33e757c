import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import type { Finding } from '../rules/rule.ts';
import { diagnosticOf } from './convert.ts';

/** More than an editor shows of one file. */
const most = 1000;

const weight = { error: 0, warning: 1, information: 2, hint: 3 } as const;

const graver = (a: Finding, b: Finding): number => weight[a.severity] - weight[b.severity] || a.span.line - b.span.line;

const remainder = (count: number): Diagnostic => ({
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  severity: DiagnosticSeverity.Information,
  source: 'drillhand',
  message: `${count} more findings of this file are not shown; mend the gravest first`,
});

/** The findings of a file as the editor shows them; of very many the gravest, and how many are left out. */
export function diagnosticsOf(findings: readonly Finding[], uri: string): Diagnostic[] {
  if (findings.length <= most) return findings.map((finding) => diagnosticOf(finding, uri));
  const gravest = [...findings].sort(graver).slice(0, most - 1);
  return [...gravest.map((finding) => diagnosticOf(finding, uri)), remainder(findings.length - gravest.length)];
}
