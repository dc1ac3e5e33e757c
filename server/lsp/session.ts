import {
  type ClientCapabilities,
  CodeLensRefreshRequest,
  type Connection,
  type Diagnostic,
  MessageType,
  ShowMessageNotification,
} from 'vscode-languageserver';
import { analyse } from '../analysis/index.ts';
import type { Settings, Snapshot } from '../analysis/snapshot.ts';
import { allWords, type UsedWords, wordsOfLog } from '../features/completion/used-words.ts';
import { type Shows, showsAll } from '../features/shows.ts';
import type { Finding } from '../rules/rule.ts';
import { canonical } from './address.ts';
import { diagnosticsOf, type LinkOf, linkTo } from './diagnostics.ts';
import type { TextChange } from './documents.ts';
import { type Files, noFiles } from './files.ts';
import { inEnglish } from './language.ts';
import { OpenLog } from './open-log.ts';
import { diagnosticsOfFile } from './places.ts';
import { type AnalysedParams, analysedNotification, folderChangedNotification } from './protocol.ts';
import { Scheduler } from './scheduler.ts';
import { defaultSettings, packTroubles, readSettings, settingsFor, type UserSettings } from './settings.ts';
import { type OpenState, Workspace } from './workspace.ts';

/** How long an editor may take to answer what its settings are, in milliseconds. */
const settingsWait = 2000;

/** The one thing from outside that a session asks for itself. */
export interface World {
  readonly today: () => string;
  /** A file shipped beside the program, such as a font. Rejects where there is none. */
  readonly asset: (name: string) => Promise<Uint8Array>;
  /** The files of the workspace; none where left out. */
  readonly files?: Files;
}

const errorText = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));

const withFindings = (snapshot: Snapshot, more: readonly Finding[]): Snapshot =>
  more.length === 0 ? snapshot : { ...snapshot, findings: [...snapshot.findings, ...more] };

const afterAWhile = (): Promise<null> =>
  new Promise((resolve) => {
    setTimeout(() => resolve(null), settingsWait).unref();
  });

/** True where an editor's own options say yes to something. */
const says = (options: unknown, name: string): boolean =>
  typeof options === 'object' &&
  options !== null &&
  Object.entries(options).some(([key, value]) => key === name && value === true);

/** Logs of a folder whose words are looked at for one list of suggestions. */
const mostBeside = 200;

/** One editor's open logs, its settings, and what it is told of them. */
export class Session {
  readonly connection: Connection;
  /** The folders that are open in the editor, with their logs, packs and settings. */
  readonly folder: Workspace;
  readonly #world: World;
  readonly #logs = new Map<string, OpenLog>();
  /** The editor's own address of each open log, by the canonical one. */
  readonly #addresses = new Map<string, string>();
  readonly #scheduler = new Scheduler((uri) => this.#publish(uri));
  /** What the editor was last told of settings and pack files, as text. */
  readonly #toldOfFiles = new Map<string, string>();
  readonly #toldOfSettings = new Set<string>();
  /** What the editor answered for a folder; null while it is asked. */
  readonly #answers = new Map<string, Promise<UserSettings>>();
  #pushed: UserSettings = defaultSettings;
  #client: ClientCapabilities = {};
  #showsPages = false;
  /** The words of the logs beside one, as they were put together last, and of which. */
  #beside: { readonly of: readonly UsedWords[]; readonly words: UsedWords } = { of: [], words: new Map() };
  #asksAgain = false;

  constructor(connection: Connection, world: World) {
    this.connection = connection;
    this.#world = world;
    this.folder = new Workspace(world.files ?? noFiles, {
      open: (uri) => this.#openState(uri),
      settingsFor: (uri) => this.#settingsFor(uri),
      onChecksChanged: () => this.#checkAnew(),
      onChanged: (files) => this.#tellFolder(files),
      fail: (what, error) => this.fail(what, error),
    });
  }

  get client(): ClientCapabilities {
    return this.#client;
  }

  /** True where the editor opens its list when a suggestion that was taken says so. */
  get asksAgain(): boolean {
    return this.#asksAgain;
  }

  /** True where the editor shows the pages that links to rules and packs lead to. */
  get showsPages(): boolean {
    return this.#showsPages;
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
    this.#showsPages = says(options, 'pages');
    this.#asksAgain = says(options, 'asksAgain');
    this.#pushed = readSettings(options);
  }

  /** How often the other logs in a log's folder use their terms; open logs as they stand in the editor come first. */
  usedBeside(uri: string): UsedWords {
    const logs = this.#wordsBeside(uri);
    const { of, words } = this.#beside;
    if (of.length === logs.length && of.every((each, at) => each === logs[at])) return words;
    this.#beside = { of: logs, words: allWords(logs) };
    return this.#beside.words;
  }

  #wordsBeside(uri: string): readonly UsedWords[] {
    const own = canonical(uri);
    const folder = own.slice(0, own.lastIndexOf('/') + 1);
    const isBeside = (other: string): boolean => other !== own && other.startsWith(folder);
    const open = [...this.#logs.values()].filter((log) => isBeside(canonical(log.uri)));
    const known = new Set(open.map((log) => canonical(log.uri)));
    const closed = this.folder.logs().filter((log) => isBeside(log.uri) && !known.has(log.uri));
    return [...open.map((log) => wordsOfLog(log.snapshot().tree)), ...closed.map(({ used }) => used)].slice(
      0,
      mostBeside,
    );
  }

  /** What is known of an open log now, what the folder's rules say of it included; null for one that is not open. */
  snapshot(uri: string): Snapshot | null {
    const snapshot = this.#logs.get(uri)?.snapshot();
    return snapshot === undefined ? null : withFindings(snapshot, this.folder.findingsOf(canonical(uri)));
  }

  /** As `snapshot`, with findings in English whatever the editor speaks: for a record that goes to others. */
  snapshotForOthers(uri: string): Snapshot | null {
    const log = this.#logs.get(uri);
    if (log === undefined) return null;
    return inEnglish(() => {
      const snapshot = analyse(log.text.lines, log.settings, log.version);
      const findings = [...snapshot.findings, ...this.folder.check(canonical(uri))];
      return { ...snapshot, findings };
    });
  }

  /** What an open log's user wants to see beside its text. */
  shows(uri: string): Shows {
    return this.#logs.get(uri)?.shows ?? showsAll;
  }

  async open(uri: string, version: number, text: string): Promise<void> {
    const first = settingsFor(this.#pushed, this.folder.files.besideOf(canonical(uri)), this.today());
    const log = new OpenLog(uri, version, text, first, this.#pushed.shows, this.#world.today);
    this.#logs.set(uri, log);
    this.#addresses.set(canonical(uri), uri);
    await this.folder.files.lookAbove(canonical(uri));
    await this.#setUp(log);
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
    if (!this.#logs.delete(uri)) return;
    this.#addresses.delete(canonical(uri));
    this.#send(uri, { uri, diagnostics: [] });
    this.folder.closed(canonical(uri));
  }

  /** Takes in settings anew: from the editor if it can be asked, else as it sent them. */
  async settingsChanged(sent: unknown): Promise<void> {
    this.#pushed = readSettings(sent);
    this.#answers.clear();
    await Promise.all([...this.#logs.values()].map((log) => this.#refresh(log)));
    this.#showAgain();
    this.folder.checkAnew();
  }

  /** Shows the user a message that waits for no answer. */
  tell(message: string): void {
    this.connection
      .sendNotification(ShowMessageNotification.type, { type: MessageType.Warning, message })
      .catch((error) => this.fail('showing a message', error));
  }

  warn(message: string): void {
    this.connection.console.warn(message);
  }

  fail(what: string, error: unknown): void {
    this.connection.console.error(`${what} failed: ${errorText(error)}`);
  }

  async #refresh(log: OpenLog): Promise<void> {
    const changed = await this.#setUp(log);
    if (changed && this.#logs.get(log.uri) === log) this.#scheduler.ask(log.uri);
  }

  /** True where the log is checked otherwise than before. */
  async #setUp(log: OpenLog): Promise<boolean> {
    const user = await this.#settingsOf(log.uri);
    log.shows = user.shows;
    const beside = this.folder.files.besideOf(canonical(log.uri));
    this.#warnOf([...user.troubles, ...(this.folder.hasScanned ? packTroubles(user, beside.own) : [])]);
    return log.setSettings(settingsFor(user, beside, this.today()));
  }

  /** What a log of the workspace is analysed with; the editor is asked once for each folder. */
  async #settingsFor(uri: string): Promise<Settings> {
    const folder = uri.slice(0, uri.lastIndexOf('/'));
    const answer = this.#answers.get(folder) ?? this.#settingsOf(uri);
    this.#answers.set(folder, answer);
    return settingsFor(await answer, this.folder.files.besideOf(uri), this.today());
  }

  #openState(uri: string): OpenState | null {
    const log = this.#logs.get(this.#addresses.get(uri) ?? '');
    return log === undefined ? null : { snapshot: log.snapshot(), settings: log.settings };
  }

  /** Settings or packs of the workspace are others than before. */
  #checkAnew(): void {
    this.#tellOfFiles();
    for (const log of this.#logs.values())
      this.#refresh(log).catch((error) => this.fail(`taking in the settings of ${log.uri}`, error));
  }

  /** Tells what is wrong in settings and pack files, each where it changed. */
  #tellOfFiles(): void {
    const checked = this.folder.files.checked();
    const gone = [...this.#toldOfFiles.keys()].filter((uri) => !checked.some((file) => file.uri === uri));
    for (const uri of gone) this.#tellOfFile(uri, []);
    for (const file of checked) this.#tellOfFile(file.uri, diagnosticsOfFile(file));
  }

  #tellOfFile(uri: string, diagnostics: Diagnostic[]): void {
    const text = JSON.stringify(diagnostics);
    if (text === (this.#toldOfFiles.get(uri) ?? '[]')) return;
    this.#toldOfFiles.set(uri, text);
    this.#send(uri, { uri, diagnostics });
  }

  #warnOf(troubles: readonly string[]): void {
    for (const message of troubles) {
      if (this.#toldOfSettings.has(message)) continue;
      this.#toldOfSettings.add(message);
      this.tell(message);
    }
  }

  #tellFolder(files: readonly string[]): void {
    for (const file of files) {
      const uri = this.#addresses.get(file);
      if (uri !== undefined) this.#scheduler.ask(uri);
    }
    this.connection.sendNotification(folderChangedNotification).catch(() => {});
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

  /** An editor that does not say that it shows links is sent none. */
  #linkOf({ limits }: Snapshot): LinkOf {
    const isShown = this.#client.textDocument?.publishDiagnostics?.codeDescriptionSupport === true;
    return isShown ? linkTo(limits, this.#showsPages) : () => null;
  }

  #publish(uri: string): void {
    const log = this.#logs.get(uri);
    if (log === undefined) return;
    try {
      const snapshot = log.snapshot();
      const address = canonical(uri);
      const { findings } = withFindings(snapshot, this.folder.findingsOf(address));
      this.folder.takeIn(address, { snapshot, settings: log.settings });
      const { version } = log;
      this.#send(uri, { uri, version, diagnostics: diagnosticsOf(findings, uri, this.#linkOf(snapshot)) });
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
