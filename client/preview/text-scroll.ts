import * as vscode from 'vscode';

/* Lines that stick to the top of an editor stand over as many of the text. */
const sticking = 5;

/** The scroll of the text of one log: tells where it goes, and lets it be scrolled, without telling its own echo. */
export class TextScroll implements vscode.Disposable {
  readonly #subscription: vscode.Disposable;
  /** The line that the page has put at the top: a scroll to there is its echo, however late it comes. */
  #putAt: number | null = null;

  constructor(
    private readonly uri: vscode.Uri,
    tell: (line: number) => void,
  ) {
    this.#subscription = vscode.window.onDidChangeTextEditorVisibleRanges(({ textEditor, visibleRanges }) => {
      const top = visibleRanges[0]?.start.line;
      const isOwn = textEditor.document.uri.toString() === uri.toString();
      if (!isOwn || top === undefined || this.#isEcho(top)) return;
      this.#putAt = null;
      tell(top);
    });
  }

  to(line: number): void {
    const uri = this.uri.toString();
    const editor = vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
    if (!editor) return;
    const inside = Math.max(0, Math.min(Math.trunc(line), editor.document.lineCount - 1));
    this.#putAt = inside;
    editor.revealRange(new vscode.Range(inside, 0, inside, 0), vscode.TextEditorRevealType.AtTop);
  }

  #isEcho(top: number): boolean {
    return this.#putAt !== null && top <= this.#putAt && top >= this.#putAt - sticking;
  }

  dispose(): void {
    this.#subscription.dispose();
  }
}
