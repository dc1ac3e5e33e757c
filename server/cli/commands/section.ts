import { drawingFile, wellSection } from '../../drawing/index.ts';
import { type Arguments, type Command, switchOption, valueOption } from '../command.ts';
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
  if (output === null) throw new Unusable('say where the section goes: -o FILE.svg, or -o - for standard output');
  const engine = await engineFor(given, world);
  const { inputs, outcome: found } = await findInputs(given.positionals, world);
  const { kept, outcome } = await readEach(inputs, engine, world, ({ name: file }, { record }) => ({ record, file }));
  if (kept.length < 2) throw new Unusable('a section needs two logs at least; name them in the order of the section');
  if (kept.every(({ record }) => record.log.ground?.elevation?.value == null))
    throw new Unusable('none of these logs gives the elevation of its ground (a "ground" line); they cannot be hung');
  await writeTogether(inputs, output, drawingFile(wellSection(kept, given.has('join'))), world);
  return [found, outcome, engine.outcome()].reduce(graver);
}

export const section: Command = {
  name: 'section',
  usage: 'drillhand section FILE FILE… -o FILE.svg [--join]',
  summary: 'Draw a section through wells, hung by their elevations, as SVG.',
  options: [
    valueOption('output', 'FILE.svg', 'the file to write, or "-" for standard output', { short: 'o' }),
    switchOption('join', 'join layers of like material and order from well to well, dashed'),
    todayOption,
  ],
  notes: [
    'The wells stand in the order in which they are named, as far apart as their places are.',
    'What lies between wells is a guess: nothing is joined unless --join asks for it.',
  ],
  run,
};
