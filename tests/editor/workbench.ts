import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type Browser, chromium, type Page } from 'playwright-core';
import type { Editor } from './editor.ts';

export interface Workbench {
  /** The browser's page that shows the window. */
  readonly page: Page;
  /** The copy of the workspace that this window works in. */
  readonly workspace: string;
  /** The editor's own address of a file on this machine. */
  uri(file: string): string;
  /** Loads the window; pairs as the workbench takes them in its `payload`. */
  open(payload: ReadonlyArray<readonly [string, string]>): Promise<void>;
  stop(): Promise<void>;
}

export interface WorkbenchOptions {
  readonly editor: Editor;
  /** Copied afresh for each window. */
  readonly workspace: string;
  /** A folder of installed extensions, where the window is to have any. */
  readonly extensionsFolder: string | null;
  /** The language that the window speaks to extensions; English where left out. */
  readonly language?: string;
}

const quietSettings = {
  'workbench.startupEditor': 'none',
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'files.autoSave': 'off',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'chat.disableAIFeatures': true,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'editor.minimap.enabled': false,
};

/** The editor takes up a language only where a pack for it is known; this one has no words, so that its own stay English. */
function knowLanguage(language: string, dataFolder: string): void {
  const words = path.join(dataFolder, 'no-words.json');
  const extensions = [{ extensionIdentifier: { id: 'drillhand.no-words' }, version: '0.0.1' }];
  const pack = { hash: language, label: language, extensions, translations: { vscode: words } };
  writeFileSync(words, JSON.stringify({ contents: {} }));
  writeFileSync(path.join(dataFolder, 'languagepacks.json'), JSON.stringify({ [language]: pack }));
}

const serverArguments = (
  { editor, extensionsFolder, language }: WorkbenchOptions,
  home: string,
  port: number,
): string[] => [
  editor.server,
  ...['--locale', language ?? 'en'],
  ...['--host', '127.0.0.1', '--port', String(port), '--without-connection-token', '--accept-server-license-terms'],
  // Without it the workbench ignores extensionDevelopmentPath and extensionTestsPath and says nothing.
  '--enable-smoke-test-driver',
  ...['--disable-workspace-trust', '--disable-telemetry', '--telemetry-level', 'off'],
  ...['--server-data-dir', path.join(home, 'server'), '--user-data-dir', path.join(home, 'data')],
  ...['--extensions-dir', extensionsFolder ?? path.join(home, 'extensions')],
];

const browserArguments = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'].concat([
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]);

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => (address !== null && typeof address === 'object' ? resolve(address.port) : reject(address)));
    });
  });

async function untilAnswering(origin: string, server: ChildProcess, log: string): Promise<void> {
  for (let tries = 0; tries < 600 && server.exitCode === null; tries++) {
    if (
      await fetch(`${origin}/version`).then(
        (answer) => answer.ok,
        () => false,
      )
    )
      return;
    await pause(50);
  }
  throw new Error(`The editor's server did not start:\n${readFileSync(log, 'utf8')}`);
}

/** Ends the server with all that it started. */
async function endGroup(server: ChildProcess): Promise<void> {
  if (server.pid === undefined || server.exitCode !== null) return;
  const group = -server.pid;
  const gone = new Promise((resolve) => server.once('exit', resolve));
  process.kill(group, 'SIGTERM');
  const force = setTimeout(() => process.kill(group, 'SIGKILL'), 3000);
  await gone;
  clearTimeout(force);
}

async function startServer(options: WorkbenchOptions, home: string): Promise<{ server: ChildProcess; origin: string }> {
  const port = await freePort();
  const log = path.join(home, 'server.log');
  const sink = openSync(log, 'w');
  const args = serverArguments(options, home, port);
  const env = { ...process.env, HOME: home, EXTENSIONS_GALLERY: '{}' };
  const server = spawn(options.editor.node, args, { stdio: ['ignore', sink, sink], detached: true, env });
  // 127.0.0.1 by number: a webview needs a service worker, which a browser allows there without https.
  const origin = `http://127.0.0.1:${port}`;
  await untilAnswering(origin, server, log);
  return { server, origin };
}

const launchBrowser = (editor: Editor): Promise<Browser> =>
  chromium.launch({ executablePath: editor.browser, args: browserArguments });

/** Starts a server and an empty browser page on a fresh copy of the workspace. */
export async function startWorkbench(options: WorkbenchOptions): Promise<Workbench> {
  const home = mkdtempSync(path.join(tmpdir(), 'drillhand-editor-'));
  const workspace = path.join(home, 'workspace');
  const settingsFile = path.join(home, 'data', 'User', 'settings.json');
  cpSync(options.workspace, workspace, { recursive: true });
  mkdirSync(path.dirname(settingsFile), { recursive: true });
  writeFileSync(settingsFile, JSON.stringify(quietSettings));
  if (options.language !== undefined) knowLanguage(options.language, path.join(home, 'data'));
  const { server, origin } = await startServer(options, home);
  const browser = await launchBrowser(options.editor);
  const page = await (await browser.newContext({ viewport: { width: 1400, height: 900 } })).newPage();
  page.setDefaultTimeout(20_000);

  return {
    page,
    workspace,
    uri: (file) => `vscode-remote://${origin.slice('http://'.length)}${file}`,
    open: async (payload) => {
      const query = new URLSearchParams({
        folder: workspace,
        payload: JSON.stringify([['skipWelcome', 'true'], ...payload]),
      });
      await page.goto(`${origin}/?${query}`);
    },
    stop: async () => {
      await browser.close();
      await endGroup(server);
      rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    },
  };
}
