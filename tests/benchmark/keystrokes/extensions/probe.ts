import { writeFileSync } from 'node:fs';
import * as vscode from 'vscode';

/** Where the text and the cursor are written after every change, for the program that counts keys. */
const stateFile = process.env.DRILLHAND_KEYSTROKES_STATE ?? '';

function tell(): void {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined || editor.document.uri.scheme !== 'file') return;
  const { start, active } = editor.selection;
  const selected = editor.document.getText(editor.selection);
  writeFileSync(
    stateFile,
    JSON.stringify({
      ...{ text: editor.document.getText(), line: start.line, character: start.character },
      ...{ endLine: active.line, endCharacter: active.character, selected },
    }),
  );
}

export function activate(context: vscode.ExtensionContext): void {
  context.subscriptions.push(
    vscode.workspace.onDidChangeTextDocument(tell),
    vscode.window.onDidChangeTextEditorSelection(tell),
    vscode.window.onDidChangeActiveTextEditor(tell),
  );
  tell();
}
