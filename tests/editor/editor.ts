import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';

/** A VS Code that runs here without a desktop: its server, the Node it needs, and a browser to show its window. */
export interface Editor {
  readonly node: string;
  readonly server: string;
  readonly browser: string;
}

const editorPackage = 'code-server@4.139.1';
const nodePackage = `node-linux-${process.arch}@24.21.0`;
const browserNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const browserPackages = ['chromium', 'fonts-dejavu-core'];

const cacheFolder = (): string =>
  process.env.DRILLHAND_EDITOR_CACHE ?? path.join(homedir(), '.cache', 'drillhand-editor');

function execute(command: string, args: readonly string[], cwd: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const child = spawn(command, args, { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (output += text));
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0
        ? resolve()
        : reject(new Error(`${command} ${args.join(' ')} ended with ${code}:\n${output.slice(-2000)}`)),
    );
  });
}

const npmInstall = (cwd: string, ...args: string[]): Promise<void> =>
  execute('npm', ['install', '--ignore-scripts', '--no-audit', '--no-fund', ...args], cwd);

const serverFolder = (folder: string): string => path.join(folder, 'node_modules', 'code-server', 'lib', 'vscode');

/** Fills a folder of its own and then gives it its name, so that a broken-off install is never taken for a whole one. */
async function install(folder: string): Promise<void> {
  const unfinished = `${folder}.${process.pid}`;
  mkdirSync(unfinished, { recursive: true });
  writeFileSync(path.join(unfinished, 'package.json'), '{"private":true}');
  await npmInstall(unfinished, '--no-save', editorPackage, nodePackage);
  await npmInstall(serverFolder(unfinished), '--omit=dev');
  rmSync(folder, { recursive: true, force: true });
  renameSync(unfinished, folder);
}

async function ensureServer(): Promise<string> {
  if (process.platform !== 'linux')
    throw new Error('The editor without a desktop runs on Linux only; elsewhere run: node tests/editor/desktop.mjs');
  const folder = path.join(cacheFolder(), editorPackage.replace('@', '-'));
  if (existsSync(folder)) return folder;
  console.log(`  Installing the editor into ${folder} (about 800 MB, once)`);
  await install(folder);
  return folder;
}

const onPath = (name: string): string | undefined =>
  (process.env.PATH ?? '')
    .split(path.delimiter)
    .map((folder) => path.join(folder, name))
    .find((file) => existsSync(file));

const findBrowser = (): string | undefined =>
  process.env.DRILLHAND_BROWSER ?? browserNames.map(onPath).find((file) => file !== undefined);

async function ensureBrowser(): Promise<string> {
  const found = findBrowser();
  if (found !== undefined) return found;
  const command = `apt-get install -y --no-install-recommends ${browserPackages.join(' ')}`;
  if (process.getuid?.() !== 0 || onPath('apt-get') === undefined)
    throw new Error(`There is no Chromium here. Run "sudo ${command}", or name one in DRILLHAND_BROWSER.`);
  console.log(`  ${command}`);
  await execute('apt-get', ['update', '-qq'], '/');
  await execute('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...browserPackages], '/');
  const installed = findBrowser();
  if (installed === undefined) throw new Error('Chromium was installed, but is not on the PATH.');
  return installed;
}

/** Finds or installs the editor and the browser. Rejects with a sentence that says what to do by hand. */
export async function ensureEditor(): Promise<Editor> {
  const browser = await ensureBrowser();
  const folder = await ensureServer();
  return {
    node: path.join(folder, 'node_modules', nodePackage.replace(/@.*/, ''), 'bin', 'node'),
    server: path.join(serverFolder(folder), 'out', 'server-main.js'),
    browser,
  };
}

/** Installs a packed extension into a folder of extensions. */
export const installExtension = (editor: Editor, vsix: string, extensionsFolder: string, home: string): Promise<void> =>
  execute(
    editor.node,
    [
      editor.server,
      '--accept-server-license-terms',
      '--install-extension',
      vsix,
      '--extensions-dir',
      extensionsFolder,
    ].concat(['--server-data-dir', path.join(home, 'server'), '--user-data-dir', path.join(home, 'data')]),
    home,
  );
