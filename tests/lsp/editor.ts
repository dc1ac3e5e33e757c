import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { afterAll, afterEach, beforeAll } from 'vitest';
import {
  type ClientCapabilities,
  createMessageConnection,
  type MessageConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

/** The server as one file in a folder of its own. */
export interface Bundle {
  readonly file: string;
  remove(): void;
}

/** Bundles the server as a build does. */
export async function bundleServer(): Promise<Bundle> {
  const folder = mkdtempSync(path.join(tmpdir(), 'drillhand-server-'));
  const file = path.join(folder, 'server.cjs');
  await build({
    absWorkingDir: path.resolve(import.meta.dirname, '../..'),
    entryPoints: ['server/lsp/node.ts'],
    outfile: file,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    mainFields: ['module', 'main'],
    logLevel: 'error',
  });
  return { file, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

const everyAbility: ClientCapabilities = {
  workspace: { configuration: true },
  textDocument: {
    completion: { completionItem: { snippetSupport: true }, completionList: { itemDefaults: ['editRange'] } },
  },
};

const waitAtMost = 20_000;

/** What an editor that speaks to the server over its standard streams sees of it. */
export class Editor {
  readonly process: ChildProcess;
  readonly connection: MessageConnection;
  /** Every report of findings, in the order in which they came. */
  readonly reports: PublishDiagnosticsParams[] = [];
  readonly notes: { method: string; params: unknown }[] = [];
  readonly logged: string[] = [];
  /** What the editor answers when it is asked for its settings. */
  settings: unknown = null;
  readonly #waiting = new Set<() => void>();
  readonly exited: Promise<number | null>;

  constructor(
    readonly bundle: Bundle,
    args: readonly string[] = ['--stdio'],
  ) {
    this.process = spawn(process.execPath, [bundle.file, ...args], { stdio: ['pipe', 'pipe', 'pipe'] });
    const { stdin, stdout } = this.process;
    if (stdin === null || stdout === null) throw new Error('the server has no standard streams');
    this.exited = new Promise((resolve) => this.process.once('exit', resolve));
    this.connection = createMessageConnection(new StreamMessageReader(stdout), new StreamMessageWriter(stdin));
    this.connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      this.reports.push(params);
      this.#wake();
    });
    this.connection.onNotification('window/logMessage', ({ message }: { message: string }) => {
      this.logged.push(message);
      this.#wake();
    });
    this.connection.onNotification((method, params) => {
      this.notes.push({ method, params });
      this.#wake();
    });
    this.connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) =>
      items.map(() => this.settings),
    );
    this.connection.onRequest('client/registerCapability', () => null);
    this.connection.listen();
  }

  request<R>(method: string, params: unknown): Promise<R> {
    return this.connection.sendRequest<R>(method, params);
  }

  notify(method: string, params: unknown): Promise<void> {
    return this.connection.sendNotification(method, params);
  }

  begin(
    capabilities: ClientCapabilities = everyAbility,
    options: unknown = null,
  ): Promise<{ capabilities: Record<string, unknown> }> {
    return this.beginIn(null, capabilities, options);
  }

  /** As `begin`, with a folder open. */
  async beginIn(
    rootUri: string | null,
    capabilities: ClientCapabilities = everyAbility,
    initializationOptions: unknown = null,
  ): Promise<{ capabilities: Record<string, unknown> }> {
    const answer = await this.request<{ capabilities: Record<string, unknown> }>('initialize', {
      processId: process.pid,
      rootUri,
      workspaceFolders: rootUri === null ? null : [{ uri: rootUri, name: 'logs' }],
      capabilities,
      initializationOptions,
    });
    await this.notify('initialized', {});
    return answer;
  }

  open(uri: string, text: string, version = 1): Promise<void> {
    return this.notify('textDocument/didOpen', { textDocument: { uri, languageId: 'drillhand', version, text } });
  }

  change(uri: string, version: number, contentChanges: readonly unknown[]): Promise<void> {
    return this.notify('textDocument/didChange', { textDocument: { uri, version }, contentChanges });
  }

  /** The report of a document's findings at a version, once it is there. */
  async report(uri: string, version: number): Promise<PublishDiagnosticsParams> {
    const find = () => this.reports.find((report) => report.uri === uri && report.version === version);
    await this.until(() => find() !== undefined, `findings of version ${version}`);
    return find() as PublishDiagnosticsParams;
  }

  /** Waits until something holds; fails where it takes too long. */
  until(holds: () => boolean, what: string): Promise<void> {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        this.#waiting.delete(look);
        reject(new Error(`waited too long for ${what}; logged: ${this.logged.join('\n')}`));
      }, waitAtMost);
      const look = () => {
        if (!holds()) return;
        clearTimeout(timer);
        this.#waiting.delete(look);
        resolve();
      };
      this.#waiting.add(look);
      look();
    });
  }

  async end(): Promise<number | null> {
    await this.request('shutdown', undefined);
    await this.notify('exit', undefined);
    const code = await this.exited;
    this.connection.dispose();
    return code;
  }

  /** Ends the server where a test has left it running. */
  stop(): void {
    this.connection.dispose();
    if (this.process.exitCode === null) this.process.kill();
  }

  #wake(): void {
    for (const look of [...this.#waiting]) look();
  }
}

/** What the hooks of a file of tests give, and nothing outside its tests. */
const given = <T>(value: T | null): T => {
  if (value === null) throw new Error('the editors of a file are there within its tests');
  return value;
};

/** The server, bundled for the tests of a file. */
function bundleOfTests(): () => Bundle {
  let bundle: Bundle | null = null;
  beforeAll(async () => {
    bundle = await bundleServer();
  }, 60_000);
  afterAll(() => bundle?.remove());
  return () => given(bundle);
}

/** Starts editors for the tests of a file; each is stopped behind the test that started it. */
export function editorsOfTests(): (args?: readonly string[]) => Editor {
  const bundle = bundleOfTests();
  const running: Editor[] = [];
  afterEach(() => {
    for (const editor of running.splice(0)) editor.stop();
  });
  return (args) => {
    const editor = new Editor(bundle(), args);
    running.push(editor);
    return editor;
  };
}

/** One editor for all tests of a file, begun before the first and ended behind the last. */
export function editorOfTests(capabilities?: ClientCapabilities): () => Editor {
  const bundle = bundleOfTests();
  let editor: Editor | null = null;
  beforeAll(async () => {
    editor = new Editor(bundle());
    await editor.begin(capabilities);
  });
  afterAll(async () => {
    await editor?.end();
  });
  return () => given(editor);
}
