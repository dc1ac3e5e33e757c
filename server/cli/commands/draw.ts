import { defaultDrawOptions, drawingFile, drawWell } from '../../drawing/index.ts';
import { type Arguments, type Command, valueOption } from '../command.ts';
import { engineFor } from '../engine.ts';
import type { Exit } from '../exit.ts';
import { readLog, singleInput } from '../inputs.ts';
import { printOrWrite } from '../outputs.ts';
import { todayOption } from '../today.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

async function run(given: Arguments, world: World): Promise<Exit> {
  const output = given.value('output');
  if (output === null) throw new Unusable('say where the drawing goes: -o FILE.svg, or -o - for standard output');
  const input = await singleInput(given.positionals, world);
  const engine = await engineFor(given, world);
  const { record } = await engine.analyse(await readLog(input, world));
  await printOrWrite(input, output, drawingFile(drawWell(record, defaultDrawOptions)), world);
  return engine.outcome();
}

export const draw: Command = {
  name: 'draw',
  usage: 'drillhand draw FILE -o FILE.svg',
  summary: 'Draw the well to scale, as SVG.',
  options: [
    valueOption('output', 'FILE.svg', 'the file to write, or "-" for standard output', { short: 'o' }),
    todayOption,
  ],
  notes: ['FILE is a log, or "-" for standard input. A drawing shows what the log says, right or wrong.'],
  run,
};
