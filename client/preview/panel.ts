import * as vscode from 'vscode';
import type { CheckerServer } from '../server.ts';
import type { FromPage, ToPage } from '../webview/messages.ts';
import { Pacer } from './pacer.ts';
import { previewPage } from './page.ts';
import { revealLine } from './reveal.ts';

const quietTime = 150;

/** The preview of one log: it asks the server for the page's content and carries clicks and cursor between the two. */
export class PreviewPanel {
  readonly #pacer = new Pacer(quietTime, () => this.#showLatest());
  readonly #subscriptions: vscode.Disposable[];
  #pageIsReady = false;
  #isStale = true;

  constructor(
    private readonly uri: vscode.Uri,
    readonly panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    private readonly server: CheckerServer,
  ) {
    this.#subscriptions = [
      panel.webview.onDidReceiveMessage((message: FromPage) => this.#take(message)),
      panel.onDidChangeViewState(() => this.#refreshIfDue()),
      server.onAnalysed((analysed) => server.isSameDocument(analysed, uri) && this.#markStale()),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.#sendCursor(textEditor)),
    ];
    panel.webview.html = previewPage(panel.webview, extension, uri);
  }

  dispose(): void {
    this.#pacer.stop();
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  async #take(message: FromPage): Promise<void> {
    if (message.type === 'reveal') return this.#orTellTheTrouble(() => revealLine(this.uri, message.line));
    this.#pageIsReady = true;
    await this.#showLatest();
  }

  #markStale(): void {
    this.#isStale = true;
    this.#refreshIfDue();
  }

  #refreshIfDue(): void {
    if (this.#isStale && this.#pageIsReady && this.panel.visible) this.#pacer.ask();
  }

  #showLatest(): Promise<void> {
    this.#isStale = false;
    return this.#orTellTheTrouble(async () => {
      await vscode.workspace.openTextDocument(this.uri);
      const preview = await this.server.preview(this.uri);
      if (preview === null) return;
      this.panel.title = vscode.l10n.t('Preview: {0}', preview.title);
      this.#send({ type: 'show', html: preview.html });
      this.#sendCursorOfVisibleEditor();
    });
  }

  async #orTellTheTrouble(task: () => Promise<void>): Promise<void> {
    try {
      await task();
    } catch (error) {
      this.#send({ type: 'trouble', message: error instanceof Error ? error.message : String(error) });
    }
  }

  #sendCursorOfVisibleEditor(): void {
    const editor = vscode.window.visibleTextEditors.find(({ document }) => this.#isOfThisLog(document));
    if (editor) this.#sendCursor(editor);
  }

  #sendCursor(editor: vscode.TextEditor): void {
    if (!this.#isOfThisLog(editor.document)) return;
    const scrollIntoView = vscode.workspace.getConfiguration('drillhand.preview').get('followCursor', true);
    this.#send({ type: 'cursor', line: editor.selection.active.line, scrollIntoView });
  }

  #isOfThisLog(document: vscode.TextDocument): boolean {
    return document.uri.toString() === this.uri.toString();
  }

  #send(message: ToPage): void {
    void this.panel.webview.postMessage(message);
  }
}
