import type { Snapshot } from '../../analysis/snapshot.ts';
import { checkFolder } from '../../folder/check-folder.ts';
import { folderWellOf } from '../../folder/folder-well.ts';
import type { FolderWell } from '../../rules/folder/well.ts';
import type { Finding, Severity } from '../../rules/rule.ts';
import { type Arguments, type Command, choiceOption, valueOption } from '../command.ts';
import { type Engine, engineFor } from '../engine.ts';
import { type Exit, exit, graver } from '../exit.ts';
import { findInputs, type Input, readLog, tolerating } from '../inputs.ts';
import { jsonReport } from '../reports/json.ts';
import type { FileFindings } from '../reports/report.ts';
import { sarifReport } from '../reports/sarif.ts';
import { closingLine, textReport } from '../reports/text.ts';
import { isAtLeast } from '../severity.ts';
import { todayOption } from '../today.ts';
import type { World } from '../world.ts';

const byPlace = (a: Finding, b: Finding): number => a.span.line - b.span.line || a.span.start - b.span.start;

const levels = ['error', 'warning', 'never'] as const;

const levelOf = (given: Arguments): Severity | null => {
  const written = given.value('fail-on') ?? 'error';
  return written === 'error' || written === 'warning' ? written : null;
};

interface Checked extends FileFindings {
  readonly path: string | null;
  readonly well: FolderWell;
}

const checkedOf = ({ name, path }: Input, snapshot: Snapshot): Checked => ({
  file: name,
  path,
  lines: snapshot.lines,
  findings: snapshot.findings,
  well: folderWellOf(snapshot, name, name),
});

/** The logs that can be read; what is wrong with the others is told. */
async function checkEach(inputs: readonly Input[], engine: Engine, world: World) {
  const checked: Checked[] = [];
  let outcome: Exit = exit.clean;
  for (const input of inputs) {
    const read = await tolerating(world, async () => {
      checked.push(checkedOf(input, await engine.analyse(await readLog(input, world))));
      return exit.clean;
    });
    outcome = graver(outcome, read);
  }
  return { checked, outcome };
}

/** The findings of each log with those of the folder that the logs make together. */
async function findingsOf(checked: readonly Checked[], engine: Engine): Promise<readonly FileFindings[]> {
  const said = new Map<string, Awaited<ReturnType<Engine['severitiesOf']>>>();
  for (const { file, path } of checked) said.set(file, await engine.severitiesOf(path));
  const ofFolder = checkFolder(
    checked.map(({ well }) => well),
    (file) => said.get(file) ?? {},
  );
  return checked.map(({ file, lines, findings }) => ({
    file,
    lines,
    findings: [...findings, ...(ofFolder.get(file) ?? [])].sort(byPlace),
  }));
}

function print(files: readonly FileFindings[], format: string, world: World): void {
  if (format === 'json') world.print(jsonReport(files));
  else if (format === 'sarif') world.print(sarifReport(files));
  else {
    for (const file of files) world.print(textReport(file, world.colour));
    if (files.length > 0) world.print(closingLine(files));
  }
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const engine = await engineFor(given, world);
  const { inputs, outcome: found } = await findInputs(given.positionals, world);
  const { checked, outcome } = await checkEach(inputs, engine, world);
  const files = await findingsOf(checked, engine);
  print(files, given.value('format') ?? 'text', world);
  const level = levelOf(given);
  const reached = level !== null && files.some((file) => file.findings.some((each) => isAtLeast(each.severity, level)));
  return [found, outcome, engine.outcome(), reached ? exit.found : exit.clean].reduce(graver);
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
    'Several logs are also checked together: the same well id, tag or place twice.',
    'A drillhand.json beside or above a log, and rule packs (*.wellrules.json) up to it, count for that log.',
    'JSON positions count from 0; the text and SARIF count from 1.',
    'A rule pack is a help for checking, not the law.',
  ],
  run,
};
