import { drawingFile, wellMap } from '../../drawing/index.ts';
import { type Arguments, type Command, valueOption } from '../command.ts';
import { engineFor } from '../engine.ts';
import { type Exit, graver } from '../exit.ts';
import { findInputs } from '../inputs.ts';
import { writeTogether } from '../several.ts';
import { todayOption } from '../today.ts';
import { readEach } from '../together.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

async function run(given: Arguments, world: World): Promise<Exit> {
  const output = given.value('output');
  if (output === null) throw new Unusable('say where the map goes: -o FILE.svg, or -o - for standard output');
  const engine = await engineFor(given, world);
  const { inputs, outcome: found } = await findInputs(given.positionals, world);
  const { kept, outcome } = await readEach(inputs, engine, world, ({ name: file }, { record }) => ({ record, file }));
  if (kept.length === 0) throw new Unusable('none of these logs could be read; there is nothing to map');
  await writeTogether(inputs, output, drawingFile(wellMap(kept)), world);
  return [found, outcome, engine.outcome()].reduce(graver);
}

export const map: Command = {
  name: 'map',
  usage: 'drillhand map FILE… -o FILE.svg',
  summary: 'Draw wells on a sketch by their places, as SVG.',
  options: [
    valueOption('output', 'FILE.svg', 'the file to write, or "-" for standard output', { short: 'o' }),
    todayOption,
  ],
  notes: [
    'FILE is a log, a folder (its .well files) or a pattern such as "logs/**/*.well".',
    'Wells whose log gives no place are named below the map.',
  ],
  run,
};
