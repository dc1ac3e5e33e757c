import * as vscode from 'vscode';
import { until } from './harness.ts';

const workspaceFile = (name: string): vscode.Uri => {
  const folder = vscode.workspace.workspaceFolders?.[0];
  if (folder === undefined) throw new Error('The test window has no folder open.');
  return vscode.Uri.joinPath(folder.uri, name);
};

/** Opens a log of the test workspace as it is on disk. */
export async function openLog(name: string): Promise<vscode.TextEditor> {
  const editor = await vscode.window.showTextDocument(workspaceFile(name));
  if (editor.document.isDirty) await vscode.commands.executeCommand('workbench.action.files.revert');
  return editor;
}

/** Opens a text that is not saved anywhere. */
export async function openText(content: string): Promise<vscode.TextEditor> {
  return vscode.window.showTextDocument(await vscode.workspace.openTextDocument({ language: 'drillhand', content }));
}

export const ruleOf = (finding: vscode.Diagnostic): string =>
  String(typeof finding.code === 'object' ? finding.code.value : finding.code);

export const findingsOf = (uri: vscode.Uri, rule: string): vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(uri).filter((finding) => ruleOf(finding) === rule);

export const untilFound = (uri: vscode.Uri, rule: string): Promise<vscode.Diagnostic> =>
  until(`a finding of ${rule}`, () => findingsOf(uri, rule)[0]);

export const untilGone = (uri: vscode.Uri, rule: string): Promise<boolean> =>
  until(`no finding of ${rule}`, () => findingsOf(uri, rule).length === 0);

/** The start of the first place where the text stands in the document, moved by `offset` characters. */
export function positionOf(document: vscode.TextDocument, text: string, offset = 0): vscode.Position {
  const index = document.getText().indexOf(text);
  if (index < 0) throw new Error(`"${text}" is not in the document.`);
  return document.positionAt(index + offset);
}

export async function replaceText(editor: vscode.TextEditor, text: string, replacement: string): Promise<void> {
  const range = new vscode.Range(positionOf(editor.document, text), positionOf(editor.document, text, text.length));
  await editor.edit((edit) => edit.replace(range, replacement));
}
