import { analyse } from '../analysis/index.ts';
import type { Settings, Snapshot } from '../analysis/snapshot.ts';
import { type UsedWords, wordsOfLog } from '../features/completion/used-words.ts';
import { type WellSymbol, wellSymbols } from '../features/well-symbols.ts';
import { checkFolder, type FolderFindings } from '../folder/check-folder.ts';
import { folderWellOf } from '../folder/folder-well.ts';
import { summaryOf, type WellSummary } from '../folder/summary.ts';
import type { TextField } from '../model/log.ts';
import type { FolderWell } from '../rules/folder/well.ts';
import type { Finding } from '../rules/rule.ts';
import { fileName, inFolder, isWithin } from './address.ts';
import { lineTextOf } from './documents.ts';
import type { Files } from './files.ts';
import { FolderFiles, saysHowToCheck } from './folder-files.ts';
import { sameSettings } from './settings.ts';

/** Logs of a workspace that are read at most, and folders that are looked into. */
const mostLogs = 5000;
const mostFolders = 20_000;
/** How long news is held back so that many changes are told at once, in milliseconds; longer while logs are read. */
const pause = 150;
const pauseWhileReading = 1000;

/** What is kept of one log of the workspace. */
export interface FolderLog {
  /** Canonical address. */
  readonly uri: string;
  readonly well: FolderWell;
  /** Its findings are those of the log alone. */
  readonly summary: WellSummary;
  /** Names of other wells: of those in which levels were read, that it replaces, or that stand in the same hole. */
  readonly others: readonly TextField[];
  /** How often it uses each term, so that the next log is offered those first. */
  readonly used: UsedWords;
  /** What it is looked for by. */
  readonly symbols: readonly WellSymbol[];
}

/** An open log, as it stands in the editor. */
export interface OpenState {
  readonly snapshot: Snapshot;
  /** What it was analysed with. */
  readonly settings: Settings;
}

/** What a workspace asks of the session that it belongs to. Addresses are canonical. */
export interface Host {
  readonly open: (uri: string) => OpenState | null;
  readonly settingsFor: (uri: string) => Promise<Settings>;
  /** The settings or packs of the workspace are others than before. */
  readonly onChecksChanged: () => void;
  /** What is known of the folder changed; the findings of the files named did. */
  readonly onChanged: (files: readonly string[]) => void;
  readonly fail: (what: string, error: unknown) => void;
}

interface Held {
  readonly log: FolderLog;
  /** What it was checked with. */
  readonly settings: Settings;
}

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

const isLog = (name: string): boolean => name.endsWith('.well');

/** Folders of programs and of version control hold no logs. */
const isPassedBy = (name: string): boolean => name.startsWith('.') || name === 'node_modules';

const othersIn = ({ log: { header, tests } }: Snapshot): readonly TextField[] => [
  ...[header.replaces, header.nested].flatMap((field) => field ?? []),
  ...tests.flatMap(({ observed }) => observed.flatMap(({ name }) => name ?? [])),
];

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * The logs of the folders that are open in the editor. They are read one after the other, each in a turn of its own, so
 * that no message waits for more than one; of each only what the folder needs is kept.
 */
export class Workspace {
  readonly files: FolderFiles;
  readonly #disk: Files;
  readonly #host: Host;
  readonly #held = new Map<string, Held>();
  /** Logs that are to be read, for they are new or others than before. */
  readonly #asked = new Set<string>();
  /** Logs that may be checked otherwise than before. */
  readonly #doubted = new Set<string>();
  #findings: FolderFindings = new Map();
  #roots: readonly string[] = [];
  #scans = 0;
  #working: Promise<void> | null = null;
  #news: NodeJS.Timeout | null = null;
  #left = false;
  #hasScanned = false;

  constructor(disk: Files, host: Host) {
    this.#disk = disk;
    this.#host = host;
    this.files = new FolderFiles(disk);
  }

  /** True once every folder was looked into, so that every pack of the workspace is known. */
  get hasScanned(): boolean {
    return this.#hasScanned;
  }

  /** True while there are logs that were not read yet. */
  get isReading(): boolean {
    return !this.#hasScanned || this.#working !== null;
  }

  /** Most logs that are read, where the folders hold more of them; else null. */
  get most(): number | null {
    return this.#left ? mostLogs : null;
  }

  /** Every log read so far, by address. */
  logs(): readonly FolderLog[] {
    return [...this.#held.values()].map(({ log }) => log).sort((a, b) => (a.uri < b.uri ? -1 : 1));
  }

  /** What the rules of the folder say of a log. */
  findingsOf(uri: string): readonly Finding[] {
    return this.#findings.get(uri) ?? [];
  }

  /** The same, found anew. */
  check(uri: string): readonly Finding[] {
    return this.#check().get(uri) ?? [];
  }

  /** Resolves once all that was asked for has been read. */
  async whenRead(): Promise<void> {
    while (this.#working !== null) await this.#working;
  }

  /** The lines of a log as they stand in the editor, else in its file; null where there is none. */
  async linesOf(uri: string): Promise<readonly string[] | null> {
    const open = this.#host.open(uri);
    if (open !== null) return open.snapshot.lines;
    const text = await this.#disk.read(uri);
    return text === null ? null : lineTextOf(text).lines;
  }

  /** Looks into the folders that are open: settings and packs are read at once, logs one after the other. */
  async open(roots: readonly string[]): Promise<void> {
    this.#roots = roots;
    this.files.setRoots(roots);
    const scan = ++this.#scans;
    this.#hasScanned = false;
    const found: string[] = [];
    for (const root of roots) await this.#walk(root, found);
    if (scan !== this.#scans) return;
    this.#hasScanned = true;
    this.#left = found.length > mostLogs;
    const logs = new Set(found.slice(0, mostLogs));
    for (const uri of this.#held.keys()) if (!logs.has(uri)) this.#asked.add(uri);
    for (const uri of logs) this.#asked.add(uri);
    this.#host.onChecksChanged();
    this.#work();
  }

  /** Takes in that files were made, changed or taken away. */
  async changed(uris: readonly string[]): Promise<void> {
    let checksChanged = false;
    for (const uri of uris.filter(saysHowToCheck)) checksChanged = (await this.files.read(uri)) || checksChanged;
    for (const uri of uris) if (this.#isOurs(uri)) this.#asked.add(uri);
    if (checksChanged) this.checkAnew();
    else this.#work();
  }

  /** Reads those logs anew that are checked otherwise than before. */
  checkAnew(): void {
    for (const uri of this.#held.keys()) this.#doubted.add(uri);
    this.#host.onChecksChanged();
    this.#work();
  }

  /** Takes in an open log as it stands now. */
  takeIn(uri: string, state: OpenState): void {
    if (this.#isOurs(uri)) this.#hold(uri, state);
  }

  /** Takes in that a log was closed: its file counts again. */
  closed(uri: string): void {
    if (!this.#isOurs(uri)) return;
    this.#asked.add(uri);
    this.#work();
  }

  #isOurs(uri: string): boolean {
    const root = this.#roots.find((each) => isWithin(uri, each));
    if (root === undefined || !isLog(fileName(uri))) return false;
    return !uri
      .slice(root.length + 1)
      .split('/')
      .some(isPassedBy);
  }

  async #walk(root: string, found: string[]): Promise<void> {
    const folders = [root];
    for (const folder of folders) {
      for (const { name, isFolder } of await this.#disk.list(folder)) {
        const uri = inFolder(folder, name);
        if (isFolder && !isPassedBy(name) && folders.length < mostFolders) folders.push(uri);
        else if (!isFolder && isLog(name) && !isPassedBy(name)) found.push(uri);
        else if (!isFolder && saysHowToCheck(uri)) await this.files.read(uri);
      }
      this.files.seen(folder);
    }
  }

  #work(): void {
    if (this.#working !== null || this.#asked.size + this.#doubted.size === 0) return;
    this.#working = this.#readAsked()
      .catch((error) => this.#host.fail('reading the logs of the folder', error))
      .finally(() => {
        this.#working = null;
        this.#tellSoon();
      });
  }

  async #readAsked(): Promise<void> {
    while (this.#asked.size + this.#doubted.size > 0) {
      await this.#readEach(this.#asked, async () => true);
      await this.#readEach(this.#doubted, (uri) => this.#isCheckedOtherwise(uri));
    }
  }

  async #readEach(uris: Set<string>, isWanted: (uri: string) => Promise<boolean>): Promise<void> {
    for (const uri of uris) {
      uris.delete(uri);
      if (!(await isWanted(uri))) continue;
      await this.#readOne(uri);
      await turn();
    }
  }

  async #isCheckedOtherwise(uri: string): Promise<boolean> {
    const held = this.#held.get(uri);
    return held !== undefined && !sameSettings(held.settings, await this.#host.settingsFor(uri));
  }

  async #readOne(uri: string): Promise<void> {
    const open = this.#host.open(uri);
    if (open !== null) return this.#hold(uri, open);
    const text = await this.#disk.read(uri);
    if (text === null) {
      if (this.#held.delete(uri)) this.#tellSoon();
      return;
    }
    const settings = await this.#host.settingsFor(uri);
    const snapshot = analyse(lineTextOf(text).lines, settings, 0);
    this.#hold(uri, this.#host.open(uri) ?? { snapshot, settings });
  }

  #hold(uri: string, { snapshot, settings }: OpenState): void {
    const log: FolderLog = {
      uri,
      well: folderWellOf(snapshot, uri, this.files.nameOf(uri)),
      summary: summaryOf(snapshot, snapshot.findings, settings.today),
      others: othersIn(snapshot),
      used: wordsOfLog(snapshot.tree),
      symbols: wellSymbols(snapshot),
    };
    const before = this.#held.get(uri);
    this.#held.set(uri, { log, settings });
    if (!same(before?.log, log) || !same(before?.settings.severities, settings.severities)) this.#tellSoon();
  }

  #tellSoon(): void {
    const wait = this.#working === null ? pause : pauseWhileReading;
    this.#news ??= setTimeout(() => {
      this.#news = null;
      this.#tell();
    }, wait).unref();
  }

  #tell(): void {
    try {
      const before = this.#findings;
      this.#findings = this.#check();
      const files = [...this.#held.keys()].filter((uri) => !same(before.get(uri), this.#findings.get(uri)));
      this.#host.onChanged(files);
    } catch (error) {
      this.#host.fail('checking the folder', error);
    }
  }

  #check(): FolderFindings {
    const severitiesOf = (file: string) => this.#held.get(file)?.settings.severities ?? {};
    const groups = this.#roots.map((root) => this.logs().filter(({ uri }) => isWithin(uri, root)));
    return new Map(
      groups.flatMap((logs) => [
        ...checkFolder(
          logs.map(({ well }) => well),
          severitiesOf,
        ),
      ]),
    );
  }
}
