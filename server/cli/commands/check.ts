import type { Snapshot } from '../../analysis/snapshot.ts';
import { folderWellOf } from '../../folder/folder-well.ts';
import type { Finding, Severity } from '../../rules/rule.ts';
import { type Arguments, type Command, choiceOption } from '../command.ts';
import { type Engine, engineFor } from '../engine.ts';
import { type Exit, exit, graver } from '../exit.ts';
import { findInputs, type Input } from '../inputs.ts';
import { rulesOption } from '../packs.ts';
import { jsonReport } from '../reports/json.ts';
import type { FileFindings } from '../reports/report.ts';
import { sarifReport } from '../reports/sarif.ts';
import { closingLine, textReport } from '../reports/text.ts';
import { isAtLeast } from '../severity.ts';
import { todayOption } from '../today.ts';
import { findingsTogether, type ReadWell, readEach } from '../together.ts';
import type { World } from '../world.ts';

const byPlace = (a: Finding, b: Finding): number => a.span.line - b.span.line || a.span.start - b.span.start;

const levels = ['error', 'warning', 'never'] as const;

const levelOf = (given: Arguments): Severity | null => {
  const written = given.value('fail-on') ?? 'error';
  return written === 'error' || written === 'warning' ? written : null;
};

interface Checked extends FileFindings, ReadWell {}

const checkedOf = ({ name, path }: Input, snapshot: Snapshot): Checked => ({
  file: name,
  path,
  lines: snapshot.lines,
  findings: snapshot.findings,
  well: folderWellOf(snapshot, name, name),
});

/** The findings of each log with those of the folder that the logs make together. */
async function findingsOf(checked: readonly Checked[], engine: Engine): Promise<readonly FileFindings[]> {
  const ofFolder = await findingsTogether(checked, engine);
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
  const { kept, outcome } = await readEach(inputs, engine, world, checkedOf);
  const files = await findingsOf(kept, engine);
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
    rulesOption,
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
