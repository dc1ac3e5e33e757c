import { Buffer } from 'node:buffer';
import { resolve } from 'node:path';
import type { Input } from './inputs.ts';
import { reasonOf, Unusable } from './unusable.ts';
import type { World } from './world.ts';

/** Writes what was made of an input, to a file or (`-`) standard output. @throws Unusable */
export async function printOrWrite(
  input: Input,
  output: string,
  content: string | Uint8Array,
  world: World,
): Promise<void> {
  if (output === '-') {
    world.print(content);
    return;
  }
  if (input.path !== null && resolve(input.path) === resolve(output))
    throw new Unusable(`${output} is the log itself; name another file to write`);
  try {
    await world.writeFile(output, typeof content === 'string' ? Buffer.from(content, 'utf8') : content);
  } catch (error) {
    throw new Unusable(`${output}: not written: ${reasonOf(error)}`);
  }
}

/** Makes the folder that files are to go into. @throws Unusable */
export async function makeFolder(path: string, world: World): Promise<void> {
  try {
    await world.makeFolder(path);
  } catch (error) {
    throw new Unusable(`${path}: no folder for the files: ${reasonOf(error)}`);
  }
}
