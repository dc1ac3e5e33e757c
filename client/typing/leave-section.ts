import * as vscode from 'vscode';

const isEmpty = (document: vscode.TextDocument, line: number): boolean => document.lineAt(line).text === '';

/** The edit that the checker makes where Enter was pressed twice: an empty line, and the cursor's line emptied too. */
const leaves = (
  { contentChanges, document, reason }: vscode.TextDocumentChangeEvent,
  cursor: vscode.Position,
): boolean =>
  reason === undefined &&
  contentChanges.length > 0 &&
  contentChanges.every(({ text, range }) => text === '' && range.isSingleLine) &&
  contentChanges.some(({ range }) => range.start.line === cursor.line) &&
  cursor.line > 0 &&
  isEmpty(document, cursor.line) &&
  isEmpty(document, cursor.line - 1);

const isWanted = (document: vscode.TextDocument): boolean =>
  vscode.workspace.getConfiguration('drillhand', document).get('typing.offerNextSection', true);

/** Behind a section that has been left, the next one that a log of this kind lacks is offered. */
export const registerLeaveSection = (): vscode.Disposable[] => [
  vscode.workspace.onDidChangeTextDocument((event) => {
    const editor = vscode.window.activeTextEditor;
    const { document } = event;
    if (editor?.document !== document || document.languageId !== 'drillhand') return;
    // The cursor is moved once the change has been told.
    setTimeout(() => {
      if (vscode.window.activeTextEditor !== editor || !editor.selection.isEmpty) return;
      if (leaves(event, editor.selection.active) && isWanted(document))
        void vscode.commands.executeCommand('editor.action.triggerSuggest');
    });
  }),
];
