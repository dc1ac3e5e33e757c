import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as vscode from 'vscode';
import {
  LanguageClient,
  type LanguageClientOptions,
  type ServerOptions,
  TransportKind,
} from 'vscode-languageclient/node';
import {
  type AnalysedParams,
  analysedNotification,
  folderChangedNotification,
  type Preview,
  type PreviewParams,
  previewRequest,
} from '../server/lsp/protocol.ts';
import { lensMiddleware } from './lens/lens.ts';
import { traceChannel } from './trace.ts';

/**
 * The texts of the editor's language by their English, for the server; null where there are none. Those that the editor
 * itself has of a country's own variant (`fr-ca`) are the client's alone.
 */
function textsIn(folder: string): unknown {
  const [language = 'en'] = vscode.env.language.split('-');
  try {
    return JSON.parse(readFileSync(path.join(folder, `bundle.l10n.${language}.json`), 'utf8'));
  } catch {
    return null;
  }
}

const clientOptions = (
  words: string,
  log: vscode.LogOutputChannel,
  trace: vscode.LogOutputChannel,
): LanguageClientOptions => ({
  documentSelector: [{ language: 'drillhand' }],
  synchronize: { configurationSection: 'drillhand' },
  outputChannel: log,
  traceOutputChannel: trace,
  initializationOptions: { pages: true, asksAgain: true, l10n: textsIn(words) },
  middleware: lensMiddleware,
});

const serverOptions = (module: string): ServerOptions => ({
  run: { module, transport: TransportKind.ipc },
  debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
});

/** The language server as the rest of the extension sees it. */
export class CheckerServer {
  readonly #client: LanguageClient;
  readonly #trace: vscode.LogOutputChannel;
  readonly #analysed = new vscode.EventEmitter<AnalysedParams>();
  readonly onAnalysed = this.#analysed.event;
  readonly #folderChanged = new vscode.EventEmitter<void>();
  readonly onFolderChanged = this.#folderChanged.event;

  /** `module` is the file of the server, `words` the folder of the texts in other languages. */
  constructor(module: string, words: string, log: vscode.LogOutputChannel) {
    this.#trace = traceChannel(log);
    const options = clientOptions(words, log, this.#trace);
    this.#client = new LanguageClient('drillhand', 'Drillhand', serverOptions(module), options);
    this.#client.onNotification(analysedNotification, (params: AnalysedParams) => this.#analysed.fire(params));
    this.#client.onNotification(folderChangedNotification, () => this.#folderChanged.fire());
  }

  async start(): Promise<void> {
    try {
      await this.#client.start();
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      void vscode.window.showErrorMessage(vscode.l10n.t('The Drillhand checker could not be started: {0}', reason));
    }
  }

  restart(): Promise<void> {
    return this.#client.restart();
  }

  async stop(): Promise<void> {
    this.#analysed.dispose();
    this.#folderChanged.dispose();
    this.#trace.dispose();
    if (this.#client.needsStop()) await this.#client.stop();
  }

  /** The preview of an open log, or null where the server does not have it open. */
  preview(uri: vscode.Uri, wishes: Omit<PreviewParams, 'textDocument'> | null): Promise<Preview | null> {
    const params: PreviewParams = { ...wishes, textDocument: { uri: this.nameOf(uri) } };
    return this.ask<Preview | null>(previewRequest, params);
  }

  /** Asks the server something beyond the language server protocol; the names are in `server/lsp/protocol.ts`. */
  ask<Answer>(method: string, params: unknown): Promise<Answer> {
    return this.#client.sendRequest<Answer>(method, params);
  }

  /** The name by which the server knows a document. */
  nameOf(uri: vscode.Uri): string {
    return this.#client.code2ProtocolConverter.asUri(uri);
  }

  isSameDocument(analysed: AnalysedParams, uri: vscode.Uri): boolean {
    return this.#client.protocol2CodeConverter.asUri(analysed.uri).toString() === uri.toString();
  }
}
