import * as l10n from '@vscode/l10n';
import { type FolderSettings, noFolderSettings, settingsFile } from '../folder/folder-settings.ts';
import { isPackFile, ownPacksOf, type PackFile, readPackFile } from '../folder/own-packs.ts';
import { type FileProblem, readFolderSettings } from '../folder/read-settings.ts';
import type { OwnPacks } from '../packs/own-packs.ts';
import { fileName, folderOf, foldersAbove, inFolder, isWithin, nameWithin } from './address.ts';
import type { Files } from './files.ts';

/** What the files beside and above a log say of how it is checked. */
export interface Beside {
  readonly settings: FolderSettings;
  readonly own: OwnPacks;
}

/** A settings or pack file, with what is wrong in it. */
export interface CheckedFile {
  readonly uri: string;
  readonly text: string;
  readonly problems: readonly FileProblem[];
  /** False where the file does not count, for what is wrong in it. */
  readonly isUsable: boolean;
}

/** True for the address of a `drillhand.json` or a `.wellrules.json`. */
export const saysHowToCheck = (uri: string): boolean => fileName(uri) === settingsFile || isPackFile(fileName(uri));

const sameId = (a: PackFile, b: PackFile): boolean => a.id.toLowerCase() === b.id.toLowerCase();

/** The settings and packs of the workspace as they are on disk. Addresses are canonical. */
export class FolderFiles {
  readonly #files: Files;
  readonly #settings = new Map<string, string>();
  readonly #packs = new Map<string, PackFile>();
  readonly #looked = new Set<string>();
  readonly #beside = new Map<string, Beside>();
  #roots: readonly string[] = [];

  constructor(files: Files) {
    this.#files = files;
  }

  setRoots(roots: readonly string[]): void {
    this.#roots = roots;
    this.#beside.clear();
  }

  /** Reads a file anew, or forgets it where it is gone. True where anything changed. */
  async read(uri: string): Promise<boolean> {
    const text = await this.#files.read(uri);
    const before = this.#settings.get(uri) ?? this.#packs.get(uri)?.text ?? null;
    if (text === before) return false;
    this.#settings.delete(uri);
    this.#packs.delete(uri);
    if (text !== null && isPackFile(fileName(uri))) this.#packs.set(uri, readPackFile(this.nameOf(uri), text));
    else if (text !== null) this.#settings.set(uri, text);
    this.#beside.clear();
    return true;
  }

  /** A folder whose files were all read; it need not be looked at again. */
  seen(folder: string): void {
    this.#looked.add(folder);
  }

  /** Reads what counts for a log and was not read yet: the settings above it, and the packs up to them. */
  async lookAbove(uri: string): Promise<void> {
    const folders = foldersAbove(uri);
    for (const folder of folders) {
      if (!this.#looked.has(folder)) await this.read(inFolder(folder, settingsFile));
      if (this.#settings.has(inFolder(folder, settingsFile))) break;
    }
    for (const folder of this.#counting(folders)) await this.#lookIn(folder);
  }

  /** What counts for a log, from what was read so far. */
  besideOf(uri: string): Beside {
    const folder = folderOf(uri) ?? uri;
    const known = this.#beside.get(folder) ?? this.#find(uri);
    this.#beside.set(folder, known);
    return known;
  }

  /** The file of a pack that counts for a log; null for one of the program, and for one that cannot be had. */
  packFile(uri: string, id: string): string | null {
    const named = this.#packsFor(foldersAbove(uri), uri).find((pack) => 'pack' in pack.read && pack.id === id);
    return [...this.#packs].find(([, pack]) => pack === named)?.[0] ?? null;
  }

  /** Every file that was read, with what is wrong in it. */
  checked(): readonly CheckedFile[] {
    const settings = [...this.#settings].map(([uri, text]) => {
      const { problems, usable } = readFolderSettings(text, this.besideOf(uri).own);
      return { uri, text, problems, isUsable: usable };
    });
    const packs = [...this.#packs].map(([uri, file]) => ({
      uri,
      text: file.text,
      problems: [...file.problems, ...this.#twice(uri, file)],
      isUsable: 'pack' in file.read,
    }));
    return [...settings, ...packs];
  }

  /** What messages call a file: its path in the folder that is open, else its name. */
  nameOf(uri: string): string {
    const root = this.#rootOf(uri);
    return root === null ? fileName(uri) : nameWithin(uri, root);
  }

  #rootOf(uri: string): string | null {
    return this.#roots.find((root) => isWithin(uri, root)) ?? null;
  }

  async #lookIn(folder: string): Promise<void> {
    if (this.#looked.has(folder)) return;
    this.#looked.add(folder);
    for (const { name, isFolder } of await this.#files.list(folder))
      if (!isFolder && isPackFile(name)) await this.read(inFolder(folder, name));
  }

  /** From the log's own folder up to the one with the settings; without any, the log's own alone. */
  #counting(folders: readonly string[]): readonly string[] {
    const top = folders.findIndex((folder) => this.#settings.has(inFolder(folder, settingsFile)));
    return folders.slice(0, Math.max(1, top + 1));
  }

  /** Packs that count for a log: those beside and above it, the nearest first, then all others of the open folder. */
  #packsFor(folders: readonly string[], uri: string): PackFile[] {
    const root = this.#rootOf(uri);
    const all = [...this.#packs].sort(([a], [b]) => (a < b ? -1 : 1));
    const counting = this.#counting(folders);
    const above = counting.flatMap((folder) => all.filter(([pack]) => folderOf(pack) === folder));
    const others = all.filter(
      ([pack]) => root !== null && isWithin(pack, root) && !counting.includes(folderOf(pack) ?? ''),
    );
    return [...above, ...others].map(([, file]) => file);
  }

  #find(uri: string): Beside {
    const folders = foldersAbove(uri);
    const own = ownPacksOf(this.#packsFor(folders, uri));
    const text = this.#settings.get(inFolder(this.#counting(folders).at(-1) ?? uri, settingsFile));
    return { own, settings: text === undefined ? noFolderSettings : readFolderSettings(text, own).settings };
  }

  #twice(uri: string, file: PackFile): FileProblem[] {
    const other = [...this.#packs].find(([each, pack]) => each < uri && sameId(pack, file));
    if (!other) return [];
    return [
      {
        offset: 0,
        message: l10n.t('the id "{0}" is also that of {1}; give each pack its own', file.id, other[1].name),
      },
    ];
  }
}
