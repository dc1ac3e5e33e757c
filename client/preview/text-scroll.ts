import * as vscode from 'vscode';

/* How long after the page has scrolled the text what the text reports is its echo, in ms. */
const echo = 400;

/** The scroll of the text of one log: tells where it goes, and lets it be scrolled, without telling its own echo. */
export class TextScroll implements vscode.Disposable {
  readonly #subscription: vscode.Disposable;
  #quietUntil = 0;

  constructor(
    private readonly uri: vscode.Uri,
    tell: (line: number) => void,
  ) {
    this.#subscription = vscode.window.onDidChangeTextEditorVisibleRanges(({ textEditor, visibleRanges }) => {
      const top = visibleRanges[0]?.start.line;
      const isOwn = textEditor.document.uri.toString() === uri.toString();
      if (isOwn && top !== undefined && Date.now() > this.#quietUntil) tell(top);
    });
  }

  to(line: number): void {
    const uri = this.uri.toString();
    const editor = vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
    if (!editor) return;
    this.#quietUntil = Date.now() + echo;
    const inside = Math.max(0, Math.min(Math.trunc(line), editor.document.lineCount - 1));
    editor.revealRange(new vscode.Range(inside, 0, inside, 0), vscode.TextEditorRevealType.AtTop);
  }

  dispose(): void {
    this.#subscription.dispose();
  }
}
