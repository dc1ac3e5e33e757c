import { formatText } from '../../features/format.ts';
import { type Arguments, type Command, switchOption } from '../command.ts';
import { encode } from '../encoding.ts';
import { type Exit, exit, graver } from '../exit.ts';
import { findInputs, type Input, readInput, tolerating } from '../inputs.ts';
import { printable } from '../printable.ts';
import { reasonOf, Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

type Way = 'print' | 'check' | 'write';

function wayOf(given: Arguments): Way {
  if (given.has('check') && given.has('write')) throw new Unusable('--check and --write do not go together; give one');
  if (given.has('check')) return 'check';
  return given.has('write') ? 'write' : 'print';
}

async function write(input: Input, bytes: Uint8Array, world: World): Promise<void> {
  if (input.path === null) throw new Unusable('standard input cannot be written; leave --write away to print');
  try {
    await world.writeFile(input.path, bytes);
  } catch (error) {
    throw new Unusable(`${input.name}: not written: ${reasonOf(error)}`);
  }
}

async function formatOne(input: Input, way: Way, world: World): Promise<Exit> {
  const read = await readInput(input, world);
  const formatted = formatText(read.text);
  if (way === 'print') {
    world.print(encode(formatted, read));
    return exit.clean;
  }
  if (formatted === read.text) return exit.clean;
  if (way === 'write') await write(input, encode(formatted, read), world);
  world.print(`${printable(read.name)}\n`);
  return way === 'check' ? exit.found : exit.clean;
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const way = wayOf(given);
  const { inputs, outcome } = await findInputs(given.positionals, world);
  let worst = outcome;
  for (const input of inputs) worst = graver(worst, await tolerating(world, () => formatOne(input, way, world)));
  return worst;
}

export const format: Command = {
  name: 'format',
  usage: 'drillhand format FILE… [--check|--write]',
  summary: 'Write logs in their long form, lined up, without a change of meaning.',
  options: [
    switchOption('check', 'only list the files that are not formatted, and end with 1 if there are any'),
    switchOption('write', 'rewrite the files that are not formatted, and list them'),
  ],
  notes: [
    'With neither option the formatted text is printed.',
    'Line ends, a byte order mark and a last line without an end stay as they are.',
    'FILE is a file, a folder (its .well files), a pattern, or "-" for standard input.',
  ],
  run,
};
