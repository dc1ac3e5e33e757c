import * as vscode from 'vscode';
import { ScrollEcho } from './scroll-echo.ts';

/** The scroll of the text of one log: tells where someone scrolls it, and lets it be scrolled without telling that. */
export class TextScroll implements vscode.Disposable {
  readonly #subscription: vscode.Disposable;
  readonly #echo = new ScrollEcho();

  constructor(
    private readonly uri: vscode.Uri,
    tell: (line: number) => void,
  ) {
    this.#subscription = vscode.window.onDidChangeTextEditorVisibleRanges(({ textEditor, visibleRanges }) => {
      const top = visibleRanges[0]?.start.line;
      const isOwn = textEditor.document.uri.toString() === uri.toString();
      if (isOwn && top !== undefined && !this.#echo.isEcho(top, Date.now())) tell(top);
    });
  }

  to(line: number): void {
    const uri = this.uri.toString();
    const editor = vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
    if (!editor) return;
    const inside = Math.max(0, Math.min(Math.trunc(line), editor.document.lineCount - 1));
    this.expect(inside);
    editor.revealRange(new vscode.Range(inside, 0, inside, 0), vscode.TextEditorRevealType.AtTop);
  }

  /** The page makes the text show a line: the scroll that comes of it is no one's at the text. */
  expect(line: number): void {
    this.#echo.put(line, Date.now());
  }

  dispose(): void {
    this.#subscription.dispose();
  }
}
