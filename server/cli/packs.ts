import { placeText } from '../folder/own-packs.ts';
import { packs as ownPacks, packById } from '../packs/index.ts';
import type { Pack } from '../packs/limits.ts';
import { nearNames } from '../rules/near-names.ts';
import { readOwnPack } from '../rules/own-pack.ts';
import { didYouMean } from './arguments.ts';
import { type Option, valueOption } from './command.ts';
import { readInput } from './inputs.ts';
import { Unusable } from './unusable.ts';
import type { World } from './world.ts';

/** Names packs on a command line. */
export const rulesOption: Option = valueOption(
  'rules',
  'PACK',
  'check against this rule pack too: its id or a JSON file; repeat it or use commas',
  { many: true },
);

const isFile = (name: string): boolean => /\.json$|[\\/]/i.test(name);

function packFrom(name: string, text: string): Pack {
  const read = readOwnPack(text);
  if ('pack' in read) return read.pack;
  const [first] = read.problems;
  throw new Unusable(
    `${name}:${placeText(text, first?.offset ?? 0)}: ${first?.message ?? 'not a rule pack'}; "drillhand schema pack" prints what one looks like`,
  );
}

async function packInFile(path: string, world: World): Promise<Pack> {
  const { name, text } = await readInput({ name: path, path }, world);
  return packFrom(name, text);
}

function packNamed(id: string): Pack {
  const pack = packById(id);
  if (pack) return pack;
  const ids = ownPacks.map((each) => each.id);
  const near = didYouMean(nearNames(id, ids));
  throw new Unusable(`there is no rule pack "${id}"${near === '' ? `; known are ${ids.join(', ')}` : near}`);
}

/** The packs asked for, each the id of one that comes with the program or a JSON file. @throws Unusable */
export async function packsFrom(asked: readonly string[], world: World): Promise<readonly Pack[]> {
  const names = asked.flatMap((each) => each.split(',')).map((each) => each.trim());
  if (names.includes('')) throw new Unusable('--rules has an empty name');
  return Promise.all(names.map((name) => (isFile(name) ? packInFile(name, world) : packNamed(name))));
}
