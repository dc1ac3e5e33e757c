import * as vscode from 'vscode';
import type { CheckerServer } from '../server.ts';
import type { KeptState } from '../webview/messages.ts';
import { resourceRoot } from './page.ts';
import { PreviewPanel } from './panel.ts';

const viewType = 'drillhand.preview';

/** One panel a log; asking for a log's preview again brings its panel to the front. */
class Previews implements vscode.WebviewPanelSerializer<KeptState> {
  readonly #byDocument = new Map<string, PreviewPanel>();

  constructor(
    private readonly extension: vscode.Uri,
    private readonly server: CheckerServer,
  ) {}

  open(resource: vscode.Uri | undefined): void {
    const uri = resource ?? vscode.window.activeTextEditor?.document.uri;
    if (uri === undefined) return;
    const shown = this.#byDocument.get(uri.toString());
    if (shown) shown.panel.reveal(undefined, true);
    else this.#adopt(this.#newPanel(), uri);
  }

  async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: KeptState | undefined): Promise<void> {
    if (typeof state?.uri !== 'string') return panel.dispose();
    panel.webview.options = this.#options();
    this.#adopt(panel, vscode.Uri.parse(state.uri));
  }

  disposeAll(): void {
    for (const preview of this.#byDocument.values()) preview.dispose();
    this.#byDocument.clear();
  }

  #newPanel(): vscode.WebviewPanel {
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    return vscode.window.createWebviewPanel(viewType, vscode.l10n.t('Preview'), column, this.#options());
  }

  #options(): vscode.WebviewOptions {
    return { enableScripts: true, localResourceRoots: [resourceRoot(this.extension)] };
  }

  #adopt(panel: vscode.WebviewPanel, uri: vscode.Uri): void {
    const preview = new PreviewPanel(uri, panel, this.extension, this.server);
    this.#byDocument.set(uri.toString(), preview);
    panel.onDidDispose(() => {
      preview.dispose();
      this.#byDocument.delete(uri.toString());
    });
  }
}

export function registerPreviews(context: vscode.ExtensionContext, server: CheckerServer): vscode.Disposable[] {
  const previews = new Previews(context.extensionUri, server);
  return [
    { dispose: () => previews.disposeAll() },
    vscode.commands.registerCommand('drillhand.openPreview', (uri?: vscode.Uri) => previews.open(uri)),
    vscode.window.registerWebviewPanelSerializer(viewType, previews),
  ];
}
