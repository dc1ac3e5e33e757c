import * as vscode from 'vscode';
import type { CheckerServer } from '../server.ts';
import type { KeptState } from '../webview/messages.ts';
import { resourceRoot } from '../webview-frame.ts';
import { PreviewPanel } from './panel.ts';

const viewType = 'drillhand.preview';

/** One panel a log, which stays with it; asking for a log's preview again brings its panel to the front. */
export class Previews implements vscode.WebviewPanelSerializer<KeptState> {
  readonly #byDocument = new Map<string, PreviewPanel>();

  constructor(
    private readonly extension: vscode.Uri,
    private readonly server: CheckerServer,
  ) {}

  /** The preview of a log, in front of others. */
  open(uri: vscode.Uri): PreviewPanel {
    const shown = this.#byDocument.get(uri.toString());
    shown?.panel.reveal(undefined, true);
    return shown ?? this.#adopt(this.#newPanel(), uri);
  }

  async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: KeptState | undefined): Promise<void> {
    if (typeof state?.uri !== 'string') return panel.dispose();
    panel.webview.options = this.#options();
    this.#adopt(panel, vscode.Uri.parse(state.uri));
  }

  dispose(): void {
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

  #adopt(panel: vscode.WebviewPanel, uri: vscode.Uri): PreviewPanel {
    const preview = new PreviewPanel(uri, panel, this.extension, this.server);
    this.#byDocument.set(uri.toString(), preview);
    panel.onDidDispose(() => {
      preview.dispose();
      this.#byDocument.delete(uri.toString());
    });
    return preview;
  }
}

export function registerPreviews(previews: Previews): vscode.Disposable[] {
  return [
    previews,
    vscode.commands.registerCommand('drillhand.openPreview', (resource?: vscode.Uri) => {
      const uri = resource ?? vscode.window.activeTextEditor?.document.uri;
      if (uri !== undefined) previews.open(uri);
    }),
    vscode.window.registerWebviewPanelSerializer(viewType, previews),
  ];
}
