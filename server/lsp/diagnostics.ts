import * as l10n from '@vscode/l10n';
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import { ruleById } from '../features/rules.ts';
import { clauseAt } from '../packs/index.ts';
import type { Limits } from '../packs/limits.ts';
import type { Finding } from '../rules/rule.ts';
import { diagnosticOf } from './convert.ts';
import { pageAddress } from './page-address.ts';

/** More than an editor shows of one file. */
const most = 1000;

const weight = { error: 0, warning: 1, information: 2, hint: 3 } as const;

const graver = (a: Finding, b: Finding): number => weight[a.severity] - weight[b.severity] || a.span.line - b.span.line;

const remainder = (count: number): Diagnostic => ({
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  severity: DiagnosticSeverity.Information,
  source: 'drillhand',
  message: l10n.t('{0} more findings of this file are not shown; mend the gravest first', count),
});

/** Where the code of a finding leads; null for nowhere. */
export type LinkOf = (finding: Finding) => string | null;

/**
 * What a finding rests on, as an address: the section of the pack where that is public, else the page of its rule where
 * the editor shows such pages.
 */
export const linkTo =
  (limits: Limits, showsPages: boolean): LinkOf =>
  ({ rule, limit }) =>
    clauseAt(limits, limit ?? '')?.clause.address ??
    (showsPages && ruleById(rule) !== undefined ? pageAddress('rule', rule) : null);

/**
 * The findings of a file as the editor shows them, with the links of their codes; of very many the gravest, and how
 * many are left out.
 */
export function diagnosticsOf(findings: readonly Finding[], uri: string, linkOf: LinkOf = () => null): Diagnostic[] {
  const shown = (finding: Finding) => diagnosticOf(finding, uri, linkOf(finding));
  if (findings.length <= most) return findings.map(shown);
  const gravest = [...findings].sort(graver).slice(0, most - 1);
  return [...gravest.map(shown), remainder(findings.length - gravest.length)];
}
