import { Buffer } from 'node:buffer';
import { posix, relative } from 'node:path';
import type { Exit } from '../../server/cli/exit.ts';
import { runProgram } from '../../server/cli/program.ts';
import type { World } from '../../server/cli/world.ts';
import { shippedFile } from '../export/shipped-file.ts';

type Content = string | Uint8Array;

export interface FakeFiles {
  readonly [path: string]: Content;
}

export interface Outcome {
  readonly code: Exit;
  readonly output: string;
  readonly errors: string;
  /** The files after the run. */
  readonly files: ReadonlyMap<string, Uint8Array>;
}

export interface FakeOptions {
  readonly input?: Content;
  readonly colour?: boolean;
  readonly today?: string;
  /** Writing fails with this code of the system. */
  readonly writeError?: string;
}

const bytesOf = (content: Content): Uint8Array =>
  typeof content === 'string' ? Buffer.from(content, 'utf8') : content;

const systemError = (code: string): Error => Object.assign(new Error(`${code}: as the system says it`), { code });

const pattern = (text: string): RegExp => new RegExp(`^${text.replaceAll('.', '\\.').replaceAll('*', '[^/]*')}$`);

/** A path as the files here are called: those below the current folder without it. */
const local = (path: string): string => (path.startsWith('/') ? relative('.', path) || '.' : path);

/** Runs one command line over files that exist only here. A path that is the folder of a file is a folder. */
export async function drillhand(
  args: readonly string[],
  given: FakeFiles = {},
  { input = '', colour = false, today = '2026-12-31', writeError }: FakeOptions = {},
): Promise<Outcome> {
  const files = new Map(Object.entries(given).map(([path, content]) => [path, bytesOf(content)]));
  const names = [...files.keys()].sort();
  const isFolder = (path: string): boolean => path === '.' || names.some((name) => name.startsWith(`${path}/`));
  let output = '';
  let errors = '';
  const world: World = {
    today,
    colour,
    kindOf: async (path) => (files.has(path) ? 'file' : isFolder(path) ? 'folder' : 'missing'),
    matching: async (text) => names.filter((name) => pattern(text).test(name)),
    logsIn: async (folder) => names.filter((name) => name.startsWith(`${folder}/`) && name.endsWith('.well')),
    namesIn: async (folder) =>
      names.filter((name) => posix.dirname(name) === local(folder)).map((name) => posix.basename(name)),
    readFile: async (path) => {
      const bytes = files.get(local(path));
      if (!bytes) throw systemError(isFolder(path) ? 'EISDIR' : 'ENOENT');
      return bytes;
    },
    readInput: async () => bytesOf(input),
    asset: shippedFile,
    makeFolder: async () => {
      if (writeError !== undefined) throw systemError(writeError);
    },
    writeFile: async (path, bytes) => {
      if (writeError !== undefined) throw systemError(writeError);
      files.set(path, bytes);
    },
    print: (text) => {
      output += typeof text === 'string' ? text : Buffer.from(text).toString('utf8');
    },
    complain: (text) => {
      errors += text;
    },
  };
  const code = await runProgram(args, world);
  return { code, output, errors, files };
}

/** The number of messages in what was complained of. */
export const messages = (errors: string): number => errors.split('\n').filter((line) => line !== '').length;
