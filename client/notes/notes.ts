import * as vscode from 'vscode';
import type { CheckerServer } from '../server.ts';
import { askForNotes, notesInFile, readAsking } from './ask.ts';
import { ReviewPanel, type Target } from './review-panel.ts';

/** The log at whose cursor lines could be put. */
function targetNow(): Target | null {
  const editor = vscode.window.activeTextEditor;
  if (editor?.document.languageId !== 'drillhand') return null;
  return { uri: editor.document.uri, line: editor.selection.active.line };
}

async function readFieldNotes(
  extension: vscode.Uri,
  server: CheckerServer,
  file: vscode.Uri | undefined,
): Promise<void> {
  try {
    const target = targetNow();
    const notes = file ? await notesInFile(file) : await askForNotes();
    const read = notes && (await readAsking(server, notes));
    if (read) new ReviewPanel(extension, server, read, target);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    void vscode.window.showErrorMessage(vscode.l10n.t('The notes could not be read: {0}', reason));
  }
}

/** `Drillhand: Read Field Notes…`: from a selection, the clipboard or a file to a reviewed log. */
export const registerNotes = (context: vscode.ExtensionContext, server: CheckerServer): vscode.Disposable[] => [
  vscode.commands.registerCommand('drillhand.readNotes', (file?: vscode.Uri) =>
    readFieldNotes(context.extensionUri, server, file instanceof vscode.Uri ? file : undefined),
  ),
];
