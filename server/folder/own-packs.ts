import * as l10n from '@vscode/l10n';
import { packById, packNamed, packs as programPacks } from '../packs/index.ts';
import type { OwnPacks, UnreadPack } from '../packs/own-packs.ts';
import type { ReadPack } from '../packs/read-pack.ts';
import { didYouMean } from '../rules/messages.ts';
import { nearNames } from '../rules/near-names.ts';
import { readOwnPack } from '../rules/own-pack.ts';
import type { FileProblem } from './read-settings.ts';

const ending = '.wellrules.json';

/** True for the name of a file that holds a pack of the workspace. */
export const isPackFile = (name: string): boolean => name.endsWith(ending) && name.length > ending.length;

/** One pack file of a workspace as it was read; `name` is how messages call it. */
export interface PackFile {
  readonly name: string;
  readonly read: ReadPack;
  /** The id that the text gives, even where the rest of it is broken; else the file's own name. */
  readonly id: string;
  /** What is wrong in the file, for its reader. */
  readonly problems: readonly FileProblem[];
  readonly text: string;
}

/** The file's own name, without folder and ending. */
const stemOf = (name: string): string => name.slice(name.search(/[^\\/]*$/), -ending.length);

const idIn = (text: string): string | null => /"id"\s*:\s*"([^"\\]+)"/.exec(text)?.[1] ?? null;

const takesPlace = (id: string): FileProblem[] =>
  packById(id) === undefined
    ? []
    : [
        {
          offset: 0,
          message: l10n.t(
            '"{0}" is also a pack of the program, whose place this one takes: give it an id of its own',
            id,
          ),
        },
      ];

/** Reads the text of a `.wellrules.json`. Never throws. */
export function readPackFile(name: string, text: string): PackFile {
  const read = readOwnPack(text);
  if ('pack' in read) return { name, read, id: read.pack.id, problems: takesPlace(read.pack.id), text };
  return { name, read, id: idIn(text) ?? stemOf(name), problems: read.problems, text };
}

/** `3:14`, both counted from 1, of an offset in a text. */
export function placeText(text: string, offset: number): string {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return `${before.length}:${(before.at(-1) ?? '').length + 1}`;
}

const unreadOf = ({ name, id, problems, text }: PackFile): UnreadPack => {
  const [first] = problems;
  return { id, why: `${name}:${placeText(text, first?.offset ?? 0)}: ${first?.message ?? l10n.t('not a rule pack')}` };
};

/** What the pack files of a workspace come to, those nearest to the log first. */
export const ownPacksOf = (files: readonly PackFile[]): OwnPacks => ({
  packs: files.flatMap(({ read }) => ('pack' in read ? [read.pack] : [])),
  unread: files.filter(({ read }) => !('pack' in read)).map(unreadOf),
});

/** Why a pack that is named cannot be had; null where it can. */
export function packTrouble(id: string, own: OwnPacks): string | null {
  if (packNamed(id, own.packs) !== undefined) return null;
  const unread = own.unread.find((each) => each.id.toLowerCase() === id.toLowerCase());
  if (unread) return l10n.t('the rule pack "{0}" cannot be read: {1}', id, unread.why);
  const near = nearNames(
    id,
    [...own.packs, ...programPacks].map((each) => each.id),
  );
  return `${l10n.t('there is no rule pack "{0}"', id)}${didYouMean(near)}`;
}
