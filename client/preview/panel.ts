import * as vscode from 'vscode';
import type { PreviewSection } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';
import type { FromPage, ShownSection, ToPage, Wishes } from '../webview/messages.ts';
import { Pacer } from './pacer.ts';
import { previewPage } from './page.ts';
import { type Picture, Pictures } from './pictures.ts';
import { revealLine } from './reveal.ts';
import { TextScroll } from './text-scroll.ts';

const quietTime = 150;

const settings = (): vscode.WorkspaceConfiguration => vscode.workspace.getConfiguration('drillhand.preview');

/** The preview of one log: it asks the server for the page's content and carries clicks, cursor and scroll between the two. */
export class PreviewPanel {
  readonly #pacer = new Pacer(quietTime, () => this.#showLatest());
  readonly #subscriptions: vscode.Disposable[];
  readonly #pictures = new Pictures((order) => this.#send({ type: 'picture', ...order }));
  readonly #scroll: TextScroll;
  #shown = new Map<string, string>();
  #wishes: Wishes | null = null;
  #tied: boolean | null = null;
  #isStale = true;
  #pageIsReady: () => void = () => {};
  #ready = this.#untilPageIsReady();

  constructor(
    readonly uri: vscode.Uri,
    readonly panel: vscode.WebviewPanel,
    extension: vscode.Uri,
    private readonly server: CheckerServer,
  ) {
    this.#scroll = new TextScroll(uri, (line) => this.#isTied() && this.#send({ type: 'scroll', line }));
    this.#subscriptions = [
      this.#scroll,
      panel.webview.onDidReceiveMessage((message: FromPage) => this.#take(message)),
      panel.onDidChangeViewState(() => this.#viewChanged()),
      server.onAnalysed((analysed) => server.isSameDocument(analysed, uri) && this.#markStale()),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.#sendCursor(textEditor)),
      vscode.workspace.onDidChangeConfiguration((change) => {
        if (change.affectsConfiguration('drillhand.preview')) this.#sendTied();
      }),
    ];
    panel.webview.html = previewPage(panel.webview, extension, uri);
  }

  dispose(): void {
    this.#pacer.stop();
    this.#pictures.dispose();
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  /** A drawing as a picture, made by the page as its browser shows it; null where it cannot. */
  async picture(drawing: Picture): Promise<Uint8Array | null> {
    await this.#ready;
    return this.#pictures.take(drawing);
  }

  async #take(message: FromPage): Promise<void> {
    if (message.type === 'reveal') return this.#reveal(message.line);
    if (message.type === 'scrolled') return this.#scroll.to(message.line);
    if (message.type === 'pictured') return this.#pictures.taken(message.id, message.png);
    if (message.type === 'export') {
      await vscode.commands.executeCommand('drillhand.printRecord', this.uri);
      return;
    }
    if (message.type === 'tied') {
      this.#tied = message.tied;
      return;
    }
    this.#wishes = { hidden: message.hidden, widthMm: message.widthMm };
    if (message.type === 'ready') this.#begin(message.tied);
    await this.#showLatest();
  }

  #reveal(line: number): Promise<void> {
    this.#scroll.expect(line);
    return this.#orTellTheTrouble(() => revealLine(this.uri, line));
  }

  /** A page that has just loaded shows nothing yet, whatever the one before it showed. */
  #begin(tied: boolean | null): void {
    this.#shown = new Map();
    this.#tied = tied;
    this.#sendTied();
    this.#pageIsReady();
  }

  #untilPageIsReady(): Promise<void> {
    return new Promise((resolve) => {
      this.#pageIsReady = resolve;
    });
  }

  /** The editor drops the page of a preview that is hidden, and loads it again when it is shown. */
  #viewChanged(): void {
    if (this.panel.visible) this.#refreshIfDue();
    else this.#ready = this.#untilPageIsReady();
  }

  #markStale(): void {
    this.#isStale = true;
    this.#refreshIfDue();
  }

  #refreshIfDue(): void {
    if (this.#isStale && this.#wishes !== null && this.panel.visible) this.#pacer.ask();
  }

  #showLatest(): Promise<void> {
    this.#isStale = false;
    return this.#orTellTheTrouble(async () => {
      await vscode.workspace.openTextDocument(this.uri);
      const preview = await this.server.preview(this.uri, this.#wishes);
      if (preview === null) return;
      this.panel.title = vscode.l10n.t('Preview: {0}', preview.title);
      this.#send({ type: 'show', sections: this.#changed(preview.sections), columns: preview.columns });
      this.#sendCursorOfVisibleEditor();
    });
  }

  /** The sections, without the text of those that the page shows already. */
  #changed(sections: readonly PreviewSection[]): ShownSection[] {
    const before = this.#shown;
    this.#shown = new Map(sections.map(({ id, html }) => [id, html]));
    return sections.map(({ id, html }) => ({ id, html: before.get(id) === html ? null : html }));
  }

  async #orTellTheTrouble(task: () => Promise<void>): Promise<void> {
    try {
      await task();
    } catch (error) {
      this.#send({ type: 'trouble', message: error instanceof Error ? error.message : String(error) });
    }
  }

  #isTied(): boolean {
    return this.#tied ?? settings().get('tieScrolling', false);
  }

  #sendTied(): void {
    this.#send({ type: 'tied', tied: this.#isTied() });
  }

  #sendCursorOfVisibleEditor(): void {
    const editor = vscode.window.visibleTextEditors.find(({ document }) => this.#isOfThisLog(document));
    if (editor) this.#sendCursor(editor);
  }

  #sendCursor(editor: vscode.TextEditor): void {
    if (!this.#isOfThisLog(editor.document)) return;
    const scrollIntoView = settings().get('followCursor', true);
    this.#send({ type: 'cursor', line: editor.selection.active.line, scrollIntoView });
  }

  #isOfThisLog(document: vscode.TextDocument): boolean {
    return document.uri.toString() === this.uri.toString();
  }

  #send(message: ToPage): void {
    void this.panel.webview.postMessage(message);
  }
}
