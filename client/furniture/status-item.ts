import * as vscode from 'vscode';
import { type LogStatus, logStatusRequest } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

interface Counts {
  readonly errors: number;
  readonly warnings: number;
  readonly others: number;
}

function countsOf(uri: vscode.Uri): Counts {
  const found = vscode.languages.getDiagnostics(uri).filter(({ source }) => source === 'drillhand');
  const count = (severity: vscode.DiagnosticSeverity): number =>
    found.filter((each) => each.severity === severity).length;
  const errors = count(vscode.DiagnosticSeverity.Error);
  const warnings = count(vscode.DiagnosticSeverity.Warning);
  return { errors, warnings, others: found.length - errors - warnings };
}

const one = (count: number, single: string, many: string): string[] =>
  count === 0 ? [] : [count === 1 ? single : many];

function findingsText({ errors, warnings, others }: Counts): string {
  const parts = [
    ...one(errors, vscode.l10n.t('1 error'), vscode.l10n.t('{0} errors', errors)),
    ...one(warnings, vscode.l10n.t('1 warning'), vscode.l10n.t('{0} warnings', warnings)),
    ...one(others, vscode.l10n.t('1 remark'), vscode.l10n.t('{0} remarks', others)),
  ];
  return parts.length === 0 ? vscode.l10n.t('No findings') : parts.join(', ');
}

const packText = ({ packs }: LogStatus): string => vscode.l10n.t('checked against {0}', packs.join(', '));

function dueText({ due }: LogStatus): string {
  if (due === null) return '';
  const { what, date, days } = due;
  if (days === null) return vscode.l10n.t('{0} due {1}', what, date);
  if (days < 0) return vscode.l10n.t('{0} was due {1}', what, date);
  return vscode.l10n.t('{0} due {1}, days left: {2}', what, date, days);
}

const severityOf = ({ errors, warnings }: Counts): vscode.LanguageStatusSeverity => {
  if (errors > 0) return vscode.LanguageStatusSeverity.Error;
  return warnings > 0 ? vscode.LanguageStatusSeverity.Warning : vscode.LanguageStatusSeverity.Information;
};

function show(item: vscode.LanguageStatusItem, uri: vscode.Uri, status: LogStatus | null): void {
  const counts = countsOf(uri);
  const details = status === null ? [] : [packText(status), dueText(status)].filter((each) => each !== '');
  item.text = findingsText(counts);
  item.detail = details.join(' · ');
  item.severity = severityOf(counts);
  item.accessibilityInformation = { label: [item.text, ...details].join('; '), role: 'status' };
}

/** What is found in the log, what it is checked against, and when something is due, beside the language's name. */
export function registerStatusItem(server: CheckerServer): vscode.Disposable[] {
  const item = vscode.languages.createLanguageStatusItem('drillhand.log', { language: 'drillhand' });
  item.name = vscode.l10n.t('Well log');
  item.command = { command: 'workbench.actions.view.problems', title: vscode.l10n.t('Show Problems') };

  const refresh = async (): Promise<void> => {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId !== 'drillhand') return;
    const params = { textDocument: { uri: server.nameOf(document.uri) } };
    const status = await server.ask<LogStatus | null>(logStatusRequest, params).catch(() => null);
    if (vscode.window.activeTextEditor?.document === document) show(item, document.uri, status);
  };

  return [
    item,
    server.onAnalysed(refresh),
    vscode.window.onDidChangeActiveTextEditor(refresh),
    vscode.languages.onDidChangeDiagnostics(({ uris }) => {
      const shown = vscode.window.activeTextEditor?.document.uri.toString();
      if (uris.some((uri) => uri.toString() === shown)) void refresh();
    }),
  ];
}
