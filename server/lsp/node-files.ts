import { readdir, readFile, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Entry, Files } from './files.ts';

/** More than any log, pack or settings file has, in bytes. */
const largest = 16e6;

const isFile = (uri: string): boolean => uri.startsWith('file:');

async function list(folder: string): Promise<readonly Entry[]> {
  if (!isFile(folder)) return [];
  try {
    const entries = await readdir(fileURLToPath(`${folder}/`), { withFileTypes: true });
    return entries
      .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
      .sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch {
    return [];
  }
}

async function read(uri: string): Promise<string | null> {
  if (!isFile(uri)) return null;
  try {
    const path = fileURLToPath(uri);
    const { size } = await stat(path);
    return size > largest ? null : new TextDecoder().decode(await readFile(path));
  } catch {
    return null;
  }
}

/** The files of this machine. */
export const nodeFiles: Files = { list, read };
