// What every script here shares. Built-ins only: it also runs before any package is installed.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
export const inRoot = (...parts) => path.join(root, ...parts);
export const isMain = (moduleUrl) =>
  process.argv[1] !== undefined && fileURLToPath(moduleUrl) === realpathSync(process.argv[1]);

export const say = (text) => console.log(`\n── ${text}`);

/**
 * Runs a command, in the project's folder unless `cwd` names another, shows what it prints as it comes unless `quiet`, and keeps it.
 * @returns {Promise<{code: number, output: string, errors: string}>} code 127 where the command does not exist
 */
export function run(command, args, { env = {}, quiet = false, cwd = root } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const kept = { output: '', errors: '' };
    const keep = (stream, name, shownOn) =>
      stream.setEncoding('utf8').on('data', (text) => {
        kept[name] += text;
        if (!quiet) shownOn.write(text);
      });
    keep(child.stdout, 'output', process.stdout);
    keep(child.stderr, 'errors', process.stderr);
    child.on('error', (error) => resolve({ ...kept, code: 127, errors: `${kept.errors}${error.message}\n` }));
    child.on('close', (code) => resolve({ ...kept, code: code ?? 1 }));
  });
}

const pinnedPackages = () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(inRoot('package.json'), 'utf8'));
  return Object.entries({ ...dependencies, ...devDependencies });
};

const installedVersion = (name) => {
  const manifest = inRoot('node_modules', name, 'package.json');
  return existsSync(manifest) ? JSON.parse(readFileSync(manifest, 'utf8')).version : null;
};

export const packagesAreInstalled = () =>
  pinnedPackages().every(([name, version]) => installedVersion(name) === version);

/** Installs the locked packages if one is missing or of another version; ends the process if that fails. */
export async function ensurePackages() {
  if (packagesAreInstalled()) return;
  say('Installing the packages (once)');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const { code } = await run(npm, ['ci', '--ignore-scripts', '--no-audit', '--no-fund']);
  if (code === 0) return;
  console.error('The packages could not be installed: npm must reach its registry for this first run.');
  process.exit(1);
}

export const ensureNode = () => {
  if (Number(process.versions.node.split('.')[0]) >= 20) return;
  console.error(`Drillhand needs Node 20 or later; this is ${process.version}.`);
  process.exit(1);
};

/** The two numbers of a closing line `N passed, N failed`, or null where the output has none. */
export function totalsIn(output) {
  const lines = [...output.matchAll(/^(\d+) passed, (\d+) failed$/gm)];
  const last = lines.at(-1);
  return last ? { passed: Number(last[1]), failed: Number(last[2]) } : null;
}

export const addTotals = (all) =>
  all.reduce((sum, part) => ({ passed: sum.passed + part.passed, failed: sum.failed + part.failed }), {
    passed: 0,
    failed: 0,
  });

/** Prints the closing line and sets the exit code; a run that tested nothing has failed. */
export function closeWith({ passed, failed }) {
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
}
