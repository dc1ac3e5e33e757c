import path from 'node:path';
import { type FolderSettings, noFolderSettings, settingsFile } from '../folder/folder-settings.ts';
import { isPackFile, ownPacksOf, type PackFile, placeText, readPackFile } from '../folder/own-packs.ts';
import { type FileProblem, readFolderSettings } from '../folder/read-settings.ts';
import { severitiesOf } from '../folder/rule-choices.ts';
import { noOwnPacks, type OwnPacks } from '../packs/own-packs.ts';
import type { Severity } from '../rules/rule.ts';
import { decode } from './encoding.ts';
import { type Exit, exit } from './exit.ts';
import { printable } from './printable.ts';
import { reasonOf } from './unusable.ts';
import type { World } from './world.ts';

/** What the files beside and above a log say of how it is checked. */
export interface Beside {
  readonly packs: readonly string[];
  readonly severities: Readonly<Record<string, Severity | 'off'>>;
  readonly own: OwnPacks;
}

export const nothingBeside: Beside = { packs: [], severities: {}, own: noOwnPacks };

interface TextFile {
  readonly name: string;
  readonly text: string;
}

/** The answer to each question, asked once. */
class Kept<T> {
  readonly #answers = new Map<string, Promise<T>>();

  of(key: string, ask: (key: string) => Promise<T>): Promise<T> {
    const answer = this.#answers.get(key) ?? ask(key);
    this.#answers.set(key, answer);
    return answer;
  }
}

/** A folder and those above it, up to `top`, which is one of them. */
const upTo = (folder: string, top: string): string[] =>
  folder === top ? [folder] : [folder, ...upTo(path.dirname(folder), top)];

/** Looks beside logs, each folder and each file once; what is wrong in a file is told when it is first read. */
export class Surroundings {
  readonly #world: World;
  readonly #names = new Kept<readonly string[]>();
  readonly #packs = new Kept<readonly PackFile[]>();
  readonly #settings = new Kept<TextFile | null>();
  readonly #beside = new Kept<Beside>();
  readonly #told = new Set<string>();
  #outcome: Exit = exit.clean;

  constructor(world: World) {
    this.#world = world;
  }

  /** Unusable once a `drillhand.json` could not be used. */
  get outcome(): Exit {
    return this.#outcome;
  }

  /** What stands beside and above a log; for standard input, in the current folder. */
  of(file: string | null): Promise<Beside> {
    const folder = path.resolve(file === null ? '.' : path.dirname(file));
    return this.#beside.of(folder, () => this.#look(folder));
  }

  async #look(folder: string): Promise<Beside> {
    const top = await this.#topFrom(folder);
    const packFiles: PackFile[] = [];
    for (const each of upTo(folder, top ?? folder)) {
      packFiles.push(...(await this.#packs.of(each, () => this.#packsIn(each))));
    }
    const own = ownPacksOf(packFiles);
    const { packs, rules } = top === null ? noFolderSettings : await this.#settingsIn(top, own);
    return { packs: packs ?? [], severities: severitiesOf(rules ?? {}), own };
  }

  #namesIn(folder: string): Promise<readonly string[]> {
    return this.#names.of(folder, () => this.#world.namesIn(folder));
  }

  /** The nearest folder, from this one up, that holds settings; null where none does. */
  async #topFrom(folder: string): Promise<string | null> {
    if ((await this.#namesIn(folder)).includes(settingsFile)) return folder;
    const above = path.dirname(folder);
    return above === folder ? null : this.#topFrom(above);
  }

  async #packsIn(folder: string): Promise<readonly PackFile[]> {
    const files: PackFile[] = [];
    for (const name of (await this.#namesIn(folder)).filter(isPackFile)) {
      const read = await this.#text(path.join(folder, name));
      if (read !== null) files.push(this.#packOf(read));
    }
    return files;
  }

  #packOf({ name, text }: TextFile): PackFile {
    const file = readPackFile(name, text);
    this.#tell(name, text, file.problems);
    return file;
  }

  async #settingsIn(folder: string, own: OwnPacks): Promise<FolderSettings> {
    const file = await this.#settings.of(folder, () => this.#text(path.join(folder, settingsFile)));
    if (file === null) return noFolderSettings;
    const { settings, problems, usable } = readFolderSettings(file.text, own);
    this.#tell(file.name, file.text, problems);
    if (!usable) this.#outcome = exit.unusable;
    return settings;
  }

  async #text(file: string): Promise<TextFile | null> {
    const name = path.relative('.', file);
    try {
      const result = decode(await this.#world.readFile(file));
      if ('text' in result) return { name, text: result.text };
      this.#complain(`${name}:${result.line}:${result.column}: ${result.reason}`);
    } catch (error) {
      this.#complain(`${name}: ${reasonOf(error)}`);
    }
    this.#outcome = exit.unusable;
    return null;
  }

  #tell(name: string, text: string, problems: readonly FileProblem[]): void {
    for (const { offset, message } of problems) this.#complain(`${name}:${placeText(text, offset)}: ${message}`);
  }

  #complain(message: string): void {
    if (this.#told.has(message)) return;
    this.#told.add(message);
    this.#world.complain(`drillhand: ${printable(message)}\n`);
  }
}
