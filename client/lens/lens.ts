import * as vscode from 'vscode';
import type { Middleware } from 'vscode-languageclient/node';

const command = 'drillhand.showInPreview';

/** The totals above a section lead to it in the preview; the server's own lenses do nothing. */
export const lensMiddleware: Pick<Middleware, 'provideCodeLenses'> = {
  async provideCodeLenses(document, token, next) {
    const lenses = await next(document, token);
    for (const lens of lenses ?? [])
      lens.command = {
        title: lens.command?.title ?? '',
        tooltip: vscode.l10n.t('Show this section in the preview'),
        command,
        arguments: [document.uri, lens.range.start.line],
      };
    return lenses;
  },
};

/** The preview follows the cursor, so the cursor goes first. */
async function showInPreview(uri: vscode.Uri, line: number): Promise<void> {
  const editor = vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());
  if (editor) editor.selection = new vscode.Selection(line, 0, line, 0);
  await vscode.commands.executeCommand('drillhand.openPreview', uri);
}

export const registerLens = (): vscode.Disposable[] => [vscode.commands.registerCommand(command, showInPreview)];
