import { randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { glob } from 'tinyglobby';
import type { PathKind, World } from './world.ts';

async function kindOf(name: string): Promise<PathKind> {
  try {
    return (await stat(name)).isDirectory() ? 'folder' : 'file';
  } catch {
    return 'missing';
  }
}

const found = async (patterns: string, cwd: string): Promise<string[]> =>
  (await glob(patterns, { cwd, ignore: ['**/node_modules/**'], expandDirectories: false })).sort();

async function namesIn(folder: string): Promise<readonly string[]> {
  try {
    const entries = await readdir(folder, { withFileTypes: true });
    return entries
      .filter((entry) => !entry.isDirectory())
      .map(({ name }) => name)
      .sort();
  } catch {
    return [];
  }
}

async function readInput(): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}

/** Permissions of a file that is to be replaced; those of a new file where there is none. */
async function modeOf(file: string): Promise<number> {
  try {
    return (await stat(file)).mode & 0o777;
  } catch {
    return 0o666;
  }
}

/** Writes beside the file and puts it in its place, so that a crash leaves the old one whole. */
async function replaceFile(name: string, bytes: Uint8Array): Promise<void> {
  const file = await realpath(name).catch(() => name);
  const draft = path.join(path.dirname(file), `.${path.basename(file)}.${randomBytes(6).toString('hex')}.tmp`);
  try {
    await writeFile(draft, bytes, { flag: 'wx', mode: await modeOf(file) });
    await rename(draft, file);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}

/** True where standard output is a terminal and nobody asked for no colour (https://no-color.org). */
const showsColour = (): boolean => process.stdout.isTTY === true && !process.env.NO_COLOR;

/** The world of this process. */
export const nodeWorld = (today: string): World => ({
  today,
  colour: showsColour(),
  kindOf,
  matching: (pattern) => found(pattern, process.cwd()),
  logsIn: async (folder) => (await found('**/*.well', folder)).map((each) => path.join(folder, each)),
  namesIn,
  readFile: (name) => readFile(name),
  readInput,
  asset: (name) => readFile(new URL(name, import.meta.url)),
  makeFolder: async (name) => void (await mkdir(name, { recursive: true })),
  writeFile: replaceFile,
  print: (text) => void process.stdout.write(text),
  complain: (text) => void process.stderr.write(text),
});
