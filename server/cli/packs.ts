import { packs as ownPacks, packById } from '../packs/index.ts';
import { Pack } from '../packs/limits.ts';
import { nearNames } from '../rules/near-names.ts';
import { didYouMean } from './arguments.ts';
import { readInput } from './inputs.ts';
import { JsonFault, readPlacedJson } from './json-places.ts';
import { Unusable } from './unusable.ts';
import type { World } from './world.ts';

const isFile = (name: string): boolean => /\.json$|[\\/]/i.test(name);

function placeOf(text: string, offset: number): string {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return `${before.length}:${(before.at(-1) ?? '').length + 1}`;
}

/** The offset of the nearest part that the text really has. */
function offsetOf(offsets: ReadonlyMap<string, number>, path: readonly PropertyKey[]): number {
  for (let length = path.length; length > 0; length--) {
    const found = offsets.get(
      path
        .slice(0, length)
        .map((each) => `/${String(each)}`)
        .join(''),
    );
    if (found !== undefined) return found;
  }
  return offsets.get('') ?? 0;
}

function packFrom(name: string, text: string): Pack {
  const { value, offsets } = readPlacedJson(text);
  const result = Pack.safeParse(value);
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  const path = [...(issue?.path ?? []), ...(issue?.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [])];
  const where = path.length > 0 ? ` at ${path.map(String).join('.')}` : '';
  throw new Unusable(
    `${name}:${placeOf(text, offsetOf(offsets, path))}: not a rule pack${where}: ${issue?.message ?? 'it has another shape'}; "drillhand schema pack" prints what one looks like`,
  );
}

async function packInFile(path: string, world: World): Promise<Pack> {
  const { name, text } = await readInput({ name: path, path }, world);
  try {
    return packFrom(name, text);
  } catch (error) {
    if (!(error instanceof JsonFault)) throw error;
    throw new Unusable(`${name}:${placeOf(text, error.offset)}: not JSON: ${error.message}`);
  }
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
