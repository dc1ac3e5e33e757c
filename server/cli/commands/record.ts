import type { Snapshot } from '../../analysis/snapshot.ts';
import { recordHtml, recordJson, recordText } from '../../export/index.ts';
import { type Arguments, type Command, choiceOption } from '../command.ts';
import { engineFor } from '../engine.ts';
import type { Exit } from '../exit.ts';
import { readLog, singleInput } from '../inputs.ts';
import { printable } from '../printable.ts';
import { todayOption } from '../today.ts';
import type { World } from '../world.ts';

function written({ record, findings, lines }: Snapshot, format: string, today: string): string {
  if (format === 'json') return recordJson(record, lines);
  return format === 'html' ? recordHtml(record, findings, { today, lines }) : printable(recordText(record, today));
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const engine = await engineFor(given, world);
  const snapshot = await engine.analyse(await readLog(await singleInput(given.positionals, world), world));
  world.print(written(snapshot, given.value('format') ?? 'text', engine.today));
  return engine.outcome();
}

export const record: Command = {
  name: 'record',
  usage: 'drillhand record FILE [options]',
  summary: 'Print the record of a log, with every figure that can be computed from it.',
  options: [choiceOption('format', ['json', 'text', 'html'], 'how to print it (default: text)'), todayOption],
  notes: [
    'FILE is a log, or "-" for standard input. What the log lacks stays unknown: null in JSON, "?" elsewhere.',
    'JSON figures are in SI, each with its formula, inputs and source lines (counted from 0).',
    '"drillhand schema record" prints the shape of the JSON.',
  ],
  run,
};
