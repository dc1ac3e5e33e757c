import { type ClientCapabilities, CodeLensRefreshRequest, type Connection } from 'vscode-languageserver';
import type { Snapshot } from '../analysis/snapshot.ts';
import { type Shows, showsAll } from '../features/shows.ts';
import { diagnosticsOf } from './diagnostics.ts';
import type { TextChange } from './documents.ts';
import { OpenLog } from './open-log.ts';
import { type AnalysedParams, analysedNotification } from './protocol.ts';
import { Scheduler } from './scheduler.ts';
import { defaultSettings, readSettings, type UserSettings } from './settings.ts';

/** How long an editor may take to answer what its settings are, in milliseconds. */
const settingsWait = 2000;

/** The one thing from outside that a session asks for itself. */
export interface World {
  readonly today: () => string;
  /** A file shipped beside the program, such as a font. Rejects where there is none. */
  readonly asset: (name: string) => Promise<Uint8Array>;
}

const errorText = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));

const afterAWhile = (): Promise<null> =>
  new Promise((resolve) => {
    setTimeout(() => resolve(null), settingsWait).unref();
  });

/** One editor's open logs, its settings, and what it is told of them. */
export class Session {
  readonly connection: Connection;
  readonly #world: World;
  readonly #logs = new Map<string, OpenLog>();
  readonly #scheduler = new Scheduler((uri) => this.#publish(uri));
  #pushed: UserSettings = defaultSettings;
  #client: ClientCapabilities = {};

  constructor(connection: Connection, world: World) {
    this.connection = connection;
    this.#world = world;
  }

  get client(): ClientCapabilities {
    return this.#client;
  }

  /** Today as YYYY-MM-DD. */
  today(): string {
    return this.#world.today();
  }

  asset(name: string): Promise<Uint8Array> {
    return this.#world.asset(name);
  }

  begin(client: ClientCapabilities, options: unknown): void {
    this.#client = client;
    this.#pushed = readSettings(options);
  }

  /** The open logs beside one. */
  beside(uri: string): readonly Snapshot[] {
    return [...this.#logs.values()].filter((log) => log.uri !== uri).map((log) => log.snapshot());
  }

  /** What is known of an open log now; null for one that is not open. */
  snapshot(uri: string): Snapshot | null {
    return this.#logs.get(uri)?.snapshot() ?? null;
  }

  /** What an open log's user wants to see beside its text. */
  shows(uri: string): Shows {
    return this.#logs.get(uri)?.shows ?? showsAll;
  }

  async open(uri: string, version: number, text: string): Promise<void> {
    const log = new OpenLog(uri, version, text, this.#pushed, this.#world.today);
    this.#logs.set(uri, log);
    log.setSettings(await this.#settingsOf(uri));
    if (this.#logs.get(uri) === log) this.#scheduler.ask(uri);
  }

  change(uri: string, version: number | null, changes: readonly TextChange[]): void {
    const log = this.#logs.get(uri);
    if (log === undefined) this.warn(`a change of ${uri} came, which is not open`);
    else if (version !== null && version < log.version)
      this.warn(`version ${version} of ${uri} came after version ${log.version} and was left out`);
    else {
      log.change(version ?? log.version + 1, changes);
      this.#scheduler.ask(uri);
    }
  }

  close(uri: string): void {
    this.#scheduler.drop(uri);
    if (this.#logs.delete(uri)) this.#send(uri, { uri, diagnostics: [] });
  }

  /** Takes in settings anew: from the editor if it can be asked, else as it sent them. */
  async settingsChanged(sent: unknown): Promise<void> {
    this.#pushed = readSettings(sent);
    await Promise.all([...this.#logs.values()].map((log) => this.#refresh(log)));
    this.#showAgain();
  }

  warn(message: string): void {
    this.connection.console.warn(message);
  }

  fail(what: string, error: unknown): void {
    this.connection.console.error(`${what} failed: ${errorText(error)}`);
  }

  async #refresh(log: OpenLog): Promise<void> {
    const changed = log.setSettings(await this.#settingsOf(log.uri));
    if (changed && this.#logs.get(log.uri) === log) this.#scheduler.ask(log.uri);
  }

  /** Asks an editor that can be asked to take in anew what is shown beside the text. */
  #showAgain(): void {
    const { inlayHint, codeLens } = this.#client.workspace ?? {};
    const failed = (error: unknown) => this.fail('showing again what stands beside the text', error);
    if (inlayHint?.refreshSupport === true) this.connection.languages.inlayHint.refresh().catch(failed);
    if (codeLens?.refreshSupport === true) this.connection.sendRequest(CodeLensRefreshRequest.type).catch(failed);
  }

  async #settingsOf(uri: string): Promise<UserSettings> {
    if (this.#client.workspace?.configuration !== true) return this.#pushed;
    try {
      const asked = this.connection.workspace.getConfiguration({ scopeUri: uri, section: 'drillhand' });
      const section: unknown = await Promise.race([asked, afterAWhile()]);
      return section === null ? this.#pushed : readSettings(section);
    } catch (error) {
      this.fail('asking for settings', error);
      return this.#pushed;
    }
  }

  #publish(uri: string): void {
    const log = this.#logs.get(uri);
    if (log === undefined) return;
    try {
      const { findings } = log.snapshot();
      const { version } = log;
      this.#send(uri, { uri, version, diagnostics: diagnosticsOf(findings, uri) });
      const analysed: AnalysedParams = { uri, version };
      this.connection.sendNotification(analysedNotification, analysed).catch(() => {});
    } catch (error) {
      this.fail(`analysing ${uri}`, error);
    }
  }

  #send(uri: string, params: Parameters<Connection['sendDiagnostics']>[0]): void {
    this.connection.sendDiagnostics(params).catch((error) => this.fail(`telling the findings of ${uri}`, error));
  }
}
