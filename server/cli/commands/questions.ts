import { wellName } from '../../drawing/title.ts';
import { type CrewQuestion, questionsFor, questionsText } from '../../export/questions/index.ts';
import { type Arguments, type Command, choiceOption } from '../command.ts';
import { engineFor } from '../engine.ts';
import type { Exit } from '../exit.ts';
import { readLog, singleInput } from '../inputs.ts';
import { rulesOption } from '../packs.ts';
import { printable } from '../printable.ts';
import { questionsMarkdown } from '../reports/questions-markdown.ts';
import { todayOption } from '../today.ts';
import type { World } from '../world.ts';

function written(name: string, questions: readonly CrewQuestion[], format: string): string {
  if (format === 'json') return `${JSON.stringify({ well: name, questions }, null, 2)}\n`;
  return printable(format === 'markdown' ? questionsMarkdown(name, questions) : questionsText(name, questions));
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const engine = await engineFor(given, world);
  const { record, findings, lines } = await engine.analyse(
    await readLog(await singleInput(given.positionals, world), world),
  );
  const questions = questionsFor(record, findings, lines);
  world.print(written(wellName(record.log.header), questions, given.value('format') ?? 'text'));
  return engine.outcome();
}

export const questions: Command = {
  name: 'questions',
  usage: 'drillhand questions FILE [options]',
  summary: 'List what only the crew can answer, ready to be sent.',
  options: [
    choiceOption('format', ['text', 'markdown', 'json'], 'how to print the list (default: text)'),
    rulesOption,
    todayOption,
  ],
  notes: [
    'FILE is a log, or "-" for standard input.',
    'On the list are every "?", every doubtful value, and every finding that nobody at a desk can settle,',
    'in the order of depth. Lines count from 1 in the text and in Markdown, from 0 in JSON.',
  ],
  run,
};
