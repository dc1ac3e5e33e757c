import { type Decoded, decode } from './encoding.ts';
import { type Exit, exit, graver } from './exit.ts';
import { printable } from './printable.ts';
import { reasonOf, Unusable } from './unusable.ts';
import type { World } from './world.ts';

/** One log to be read. `path` is null for standard input. */
export interface Input {
  readonly name: string;
  readonly path: string | null;
}

export interface ReadInput extends Input, Decoded {}

export const standardInput: Input = { name: '<stdin>', path: null };

const inputOf = (path: string): Input => ({ name: path, path });

const isPattern = (text: string): boolean => /[*?[\]{}!]/.test(text);

async function inputsOf(given: string, world: World): Promise<Input[]> {
  if (given === '-') return [standardInput];
  const kind = await world.kindOf(given);
  if (kind === 'file') return [inputOf(given)];
  if (kind === 'folder') {
    const logs = await world.logsIn(given);
    if (logs.length === 0) throw new Unusable(`${given}: no .well file in this folder`);
    return logs.map(inputOf);
  }
  if (!isPattern(given)) throw new Unusable(`${given}: no such file or folder`);
  const matches = await world.matching(given);
  if (matches.length === 0) throw new Unusable(`${given}: no file matches this pattern`);
  return matches.map(inputOf);
}

const firstOfEach = (inputs: readonly Input[]): Input[] => [
  ...new Map(inputs.map((input) => [input.path, input])).values(),
];

/** Bytes as text, with a note to the user where they were not UTF-8. @throws Unusable */
function decoded({ name }: Input, bytes: Uint8Array, world: World): Decoded {
  const result = decode(bytes);
  if ('reason' in result) throw new Unusable(`${name}:${result.line}:${result.column}: ${result.reason}`);
  if (result.encoding !== 'utf-8')
    world.complain(
      `${printable(name)}: note: read as ${result.encoding.toUpperCase()}; save it as UTF-8 for other programs\n`,
    );
  return result;
}

/** Reads one input. @throws Unusable with the place of what is wrong */
export async function readInput(input: Input, world: World): Promise<ReadInput> {
  let bytes: Uint8Array;
  try {
    bytes = input.path === null ? await world.readInput() : await world.readFile(input.path);
  } catch (error) {
    throw new Unusable(`${input.name}: ${reasonOf(error)}`);
  }
  return { ...input, ...decoded(input, bytes, world) };
}

/** As `readInput`, for what must hold a log. @throws Unusable for a file of nothing but blanks */
export async function readLog(input: Input, world: World): Promise<ReadInput> {
  const read = await readInput(input, world);
  if (/^\s*$/.test(read.text)) throw new Unusable(`${read.name}:1:1: the file is empty; there is no log to read`);
  return read;
}

/** Says what is unusable and goes on. */
export async function tolerating(world: World, work: () => Promise<Exit>): Promise<Exit> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Unusable)) throw error;
    world.complain(`drillhand: ${printable(error.message)}\n`);
    return exit.unusable;
  }
}

/** The files that arguments name, each once. Those that name none are told to the user and counted in the outcome. */
export async function findInputs(
  given: readonly string[],
  world: World,
): Promise<{ inputs: readonly Input[]; outcome: Exit }> {
  if (given.length === 0) throw new Unusable('name a file, a folder or a pattern, or "-" for standard input');
  const inputs: Input[] = [];
  let outcome: Exit = exit.clean;
  for (const each of given) {
    const found = await tolerating(world, async () => {
      inputs.push(...(await inputsOf(each, world)));
      return exit.clean;
    });
    outcome = graver(outcome, found);
  }
  return { inputs: firstOfEach(inputs), outcome };
}

/** The one file that a command works on. @throws Unusable for none or several */
export async function singleInput(given: readonly string[], world: World): Promise<Input> {
  const [first, second] = given;
  if (first === undefined) throw new Unusable('name a file, or "-" for standard input');
  if (second !== undefined) throw new Unusable(`one file at a time; "${second}" is one too many`);
  const inputs = await inputsOf(first, world);
  const [input] = inputs;
  if (!input || inputs.length > 1) throw new Unusable(`${first}: one file at a time; this names ${inputs.length}`);
  return input;
}
