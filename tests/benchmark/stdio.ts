import { type ChildProcessWithoutNullStreams, execFileSync, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createProtocolConnection, type ProtocolConnection } from 'vscode-languageserver-protocol/node';
import { median } from './clock.ts';
import { editPlace, letters, type WrittenLog } from './logs.ts';

/** A language server in one file, spoken to over its standard streams. */
export interface Server {
  readonly name: string;
  readonly notation: keyof WrittenLog;
  readonly file: string;
}

/** Medians: milliseconds, and megabytes (10^6 bytes) of resident memory. */
export interface Served {
  /** From spawning the process to the diagnostics of the document. */
  readonly first: number;
  /** From `didOpen` to the diagnostics, in the fresh process. */
  readonly open: number;
  /** From `didChange` to the diagnostics. */
  readonly edit: number;
  readonly memory: number;
}

const edits = 12;

const uriOf = ({ notation }: Server): string => `file:///a.${notation}`;

/** Resident memory of a process; as `ps` says where there is no `/proc`. */
function residentMegabytes(pid: number): number {
  const status = `/proc/${pid}/status`;
  const kibibytes = existsSync(status)
    ? /VmRSS:\s+(\d+)/.exec(readFileSync(status, 'utf8'))?.[1]
    : execFileSync('ps', ['-o', 'rss=', '-p', String(pid)], { encoding: 'utf8' });
  return (Number(kibibytes) * 1024) / 1e6;
}

class Session {
  readonly #child: ChildProcessWithoutNullStreams;
  readonly #connection: ProtocolConnection;
  #version = 1;
  #arrived: (version: number) => void = () => {};

  constructor(private readonly server: Server) {
    this.#child = spawn(process.execPath, [server.file, '--stdio']);
    this.#child.stderr.pipe(process.stderr);
    this.#connection = createProtocolConnection(this.#child.stdout, this.#child.stdin);
    this.#connection.onNotification('textDocument/publishDiagnostics', ({ version }) => this.#arrived(version));
    this.#connection.onUnhandledNotification(() => {});
    this.#connection.listen();
  }

  get memory(): number {
    return residentMegabytes(this.#child.pid ?? 0);
  }

  async begin(): Promise<void> {
    await this.#connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities: {} });
    await this.#connection.sendNotification('initialized', {});
  }

  #told(version: number): Promise<void> {
    return new Promise((resolve) => {
      this.#arrived = (arrived) => {
        if (arrived === version) resolve();
      };
    });
  }

  async open(text: string): Promise<void> {
    const told = this.#told(this.#version);
    const textDocument = { uri: uriOf(this.server), languageId: this.server.notation, version: this.#version, text };
    await this.#connection.sendNotification('textDocument/didOpen', { textDocument });
    await told;
  }

  async change(line: number, character: number, text: string): Promise<void> {
    this.#version += 1;
    const told = this.#told(this.#version);
    const range = { start: { line, character }, end: { line, character: character + 1 } };
    const textDocument = { uri: uriOf(this.server), version: this.#version };
    await this.#connection.sendNotification('textDocument/didChange', {
      textDocument,
      contentChanges: [{ range, text }],
    });
    await told;
  }

  async end(): Promise<void> {
    const gone = new Promise((resolve) => {
      this.#child.once('close', resolve);
    });
    await this.#connection.sendRequest('shutdown').catch(() => {});
    await this.#connection.sendNotification('exit').catch(() => {});
    this.#connection.dispose();
    this.#child.kill();
    await gone;
  }
}

const since = (begun: number): number => performance.now() - begun;

async function oneSession(server: Server, log: WrittenLog, size: number): Promise<Served> {
  const text = log[server.notation];
  const begun = performance.now();
  const session = new Session(server);
  await session.begin();
  const opened = performance.now();
  await session.open(text);
  const [first, open] = [since(begun), since(opened)];
  const { line, character } = editPlace(text, size);
  const changes: number[] = [];
  for (let at = 0; at < edits; at += 1) {
    const changed = performance.now();
    await session.change(line, character, letters[at % 2] ?? 'm');
    changes.push(since(changed));
  }
  const { memory } = session;
  await session.end();
  return { first, open, edit: median(changes), memory };
}

/** Starts every server on one log, turn by turn. Each session opens it, changes a letter to and fro, and ends. */
export async function servedBy(
  servers: readonly Server[],
  log: WrittenLog,
  size: number,
  rounds: number,
): Promise<Map<Server, Served>> {
  const taken = new Map(servers.map((each) => [each, [] as Served[]]));
  for (let round = 0; round < rounds; round += 1)
    for (const [server, sessions] of taken) sessions.push(await oneSession(server, log, size));
  const middle = (sessions: readonly Served[], of: keyof Served) => median(sessions.map((each) => each[of]));
  return new Map(
    [...taken].map(([server, all]) => [
      server,
      {
        first: middle(all, 'first'),
        open: middle(all, 'open'),
        edit: middle(all, 'edit'),
        memory: middle(all, 'memory'),
      },
    ]),
  );
}
