import type { Severity } from '../../rules/rule.ts';
import { type Arguments, type Command, choiceOption, valueOption } from '../command.ts';
import { analyseText, type EngineSettings } from '../engine.ts';
import { type Exit, exit, graver } from '../exit.ts';
import { findInputs, readLog, tolerating } from '../inputs.ts';
import { packsFrom } from '../packs.ts';
import { jsonReport } from '../reports/json.ts';
import type { FileFindings } from '../reports/report.ts';
import { sarifReport } from '../reports/sarif.ts';
import { closingLine, textReport } from '../reports/text.ts';
import { isAtLeast } from '../severity.ts';
import { todayFrom, todayOption } from '../today.ts';
import type { World } from '../world.ts';

const levels = ['error', 'warning', 'never'] as const;

const levelOf = (given: Arguments): Severity | null => {
  const written = given.value('fail-on') ?? 'error';
  return written === 'error' || written === 'warning' ? written : null;
};

const settingsOf = async (given: Arguments, world: World): Promise<EngineSettings> => ({
  packs: await packsFrom(given.values('rules'), world),
  today: todayFrom(given, world),
});

function printed(files: readonly FileFindings[], format: string, world: World): void {
  if (format === 'json') world.print(jsonReport(files));
  else if (format === 'sarif') world.print(sarifReport(files));
  else if (files.length > 0) world.print(closingLine(files));
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const settings = await settingsOf(given, world);
  const format = given.value('format') ?? 'text';
  const { inputs, outcome } = await findInputs(given.positionals, world);
  const files: FileFindings[] = [];
  let worst = outcome;
  for (const input of inputs) {
    const read = await tolerating(world, async () => {
      const { name, text } = await readLog(input, world);
      const { lines, findings } = analyseText(text, settings);
      const found = { file: name, lines: format === 'text' ? [] : lines, findings };
      files.push(found);
      if (format === 'text') world.print(textReport({ ...found, lines }, world.colour));
      return exit.clean;
    });
    worst = graver(worst, read);
  }
  printed(files, format, world);
  const level = levelOf(given);
  const reached = level !== null && files.some((file) => file.findings.some((each) => isAtLeast(each.severity, level)));
  return graver(worst, reached ? exit.found : exit.clean);
}

export const check: Command = {
  name: 'check',
  usage: 'drillhand check FILE… [options]',
  summary: 'Say what is wrong with logs, where and why.',
  options: [
    choiceOption('format', ['text', 'json', 'sarif'], 'how to print the findings (default: text)'),
    valueOption('rules', 'PACK', 'check against this rule pack too: its id or a JSON file; repeat it or use commas', {
      many: true,
    }),
    choiceOption('fail-on', levels, 'end with 1 from this severity on (default: error)'),
    todayOption,
  ],
  notes: [
    'FILE is a file, a folder (its .well files), a pattern such as "logs/**/*.well", or "-" for standard input.',
    'Ends with 0 if clean, 1 for findings at or above --fail-on, 2 for input or arguments that cannot be used.',
    'JSON positions count from 0; the text and SARIF count from 1.',
    'A rule pack is a help for checking, not the law.',
  ],
  run,
};
