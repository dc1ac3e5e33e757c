import * as vscode from 'vscode';

/** From the end to the first letter, so that the cursor stands where the line begins and nothing scrolls sideways. */
function wholeOf(line: vscode.TextLine): vscode.Selection {
  const { lineNumber, firstNonWhitespaceCharacterIndex, text } = line;
  return new vscode.Selection(lineNumber, text.trimEnd().length, lineNumber, firstNonWhitespaceCharacterIndex);
}

const columnShowing = (document: vscode.TextDocument): vscode.ViewColumn =>
  vscode.window.visibleTextEditors.find((editor) => editor.document === document)?.viewColumn ?? vscode.ViewColumn.One;

/** Shows the document where it already stands, with one line selected. A line past the end selects the last. */
export async function revealLine(uri: vscode.Uri, line: number): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  const inside = Math.max(0, Math.min(Math.trunc(line), document.lineCount - 1));
  const editor = await vscode.window.showTextDocument(document, columnShowing(document));
  editor.selection = wholeOf(document.lineAt(inside));
  const begins = new vscode.Range(editor.selection.active, editor.selection.active);
  editor.revealRange(begins, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}
