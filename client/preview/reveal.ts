import * as vscode from 'vscode';

const withoutIndent = (line: vscode.TextLine): vscode.Range =>
  new vscode.Range(line.lineNumber, line.firstNonWhitespaceCharacterIndex, line.lineNumber, line.text.trimEnd().length);

const columnShowing = (document: vscode.TextDocument): vscode.ViewColumn =>
  vscode.window.visibleTextEditors.find((editor) => editor.document === document)?.viewColumn ?? vscode.ViewColumn.One;

/** Shows the document where it already stands, with one line selected. A line past the end selects the last. */
export async function revealLine(uri: vscode.Uri, line: number): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  const inside = Math.max(0, Math.min(Math.trunc(line), document.lineCount - 1));
  const selection = withoutIndent(document.lineAt(inside));
  const editor = await vscode.window.showTextDocument(document, { viewColumn: columnShowing(document), selection });
  editor.revealRange(selection, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}
