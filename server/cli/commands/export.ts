import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { parseText } from '../../../grammar/index.ts';
import type { Exported, ExportedFile, ExportFormat } from '../../export/format.ts';
import { exportFormat, exportFormats, readRecord } from '../../export/index.ts';
import { buildLog } from '../../model/index.ts';
import { type Arguments, type Command, choiceOption, valueOption } from '../command.ts';
import { type Engine, engineFor } from '../engine.ts';
import { type Exit, exit } from '../exit.ts';
import { type ReadInput, readLog, singleInput } from '../inputs.ts';
import { makeFolder, printOrWrite } from '../outputs.ts';
import { printable } from '../printable.ts';
import { todayOption } from '../today.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

/** The way back: the log that a JSON record carries. */
const notation = 'notation';
const ids = [...exportFormats.map(({ id }) => id), notation];

const isRecordFile = ({ path, text }: ReadInput): boolean =>
  path === null ? text.trimStart().startsWith('{') : path.toLowerCase().endsWith('.json');

/** A value as it comes back from JSON. */
const asRead = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** The log in a record that was exported as JSON. @throws Unusable with the place of what is wrong */
function logIn({ name, text, ...read }: ReadInput, world: World): ReadInput {
  const { record, fault } = readRecord(text);
  if (record === null) throw new Unusable(`${name} is no record as "drillhand schema record" describes it: ${fault}`);
  const source = record.source.join('\n');
  if (!isDeepStrictEqual(asRead(buildLog(parseText(source))), record.log))
    world.complain(
      `${printable(name)}: note: what its "log" says is not what its "source" lines say; the lines were taken\n`,
    );
  return { ...read, name, text: source };
}

const baseName = ({ path }: ReadInput): string =>
  (path ?? 'well').replace(/^.*[\\/]/, '').replace(/\.(well|json)$/i, '') || 'well';

function formatFrom(given: Arguments): ExportFormat | typeof notation {
  const id = given.value('format');
  if (id === null) throw new Unusable(`say which format: --format ${ids.join('|')}`);
  if (id === notation) return notation;
  const format = exportFormat(id);
  if (format === null) throw new Unusable(`--format takes ${ids.join(', ')}; "${id}" is none of them`);
  return format;
}

function destination(given: Arguments, format: ExportFormat | typeof notation): string {
  const output = given.value('output');
  const several = format !== notation && format.many && given.value('table') === null;
  if (output === null)
    throw new Unusable(
      several ? 'say where the files go: -o FOLDER' : 'say where it goes: -o FILE, or -o - for standard output',
    );
  if (several && output === '-')
    throw new Unusable('several files do not go to standard output; name a folder, or one of them with --table NAME');
  return output;
}

function chosenFiles(files: readonly ExportedFile[], table: string | null): readonly ExportedFile[] {
  if (table === null) return files;
  const chosen = files.filter(({ name }) => name === `${table}.csv`);
  if (chosen.length > 0) return chosen;
  const names = files.map(({ name }) => name.replace(/\.csv$/, ''));
  throw new Unusable(`there is no table "${table}" of this log; it has ${names.join(', ') || 'none'}`);
}

interface Wanted {
  readonly output: string;
  readonly table: string | null;
}

async function writeNotation(read: ReadInput, { output }: Wanted, world: World): Promise<Exit> {
  if (!isRecordFile(read))
    throw new Unusable(`${read.name} is a log already; --format ${notation} writes the log of a JSON record`);
  await printOrWrite(read, output, logIn(read, world).text, world);
  return exit.clean;
}

async function exportedBy(format: ExportFormat, read: ReadInput, engine: Engine, world: World): Promise<Exported> {
  const { record, lines: source, findings } = await engine.analyse(isRecordFile(read) ? logIn(read, world) : read);
  return format.make(record, { source, findings, name: baseName(read), today: engine.today, asset: world.asset });
}

async function writeFiles(
  format: ExportFormat,
  read: ReadInput,
  files: readonly ExportedFile[],
  { output, table }: Wanted,
  world: World,
): Promise<void> {
  const several = table === null && format.many;
  for (const { name, content } of files)
    await printOrWrite(read, several ? join(output, name) : output, content, world);
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const format = formatFrom(given);
  const wanted: Wanted = { output: destination(given, format), table: given.value('table') };
  if (wanted.table !== null && (format === notation || !format.many))
    throw new Unusable('--table goes with a format of several tables: --format csv');
  const read = await readLog(await singleInput(given.positionals, world), world);
  if (format === notation) return writeNotation(read, wanted, world);
  const engine = await engineFor(given, world);
  const { files, left } = await exportedBy(format, read, engine, world);
  if (format.many && wanted.table === null) await makeFolder(wanted.output, world);
  await writeFiles(format, read, chosenFiles(files, wanted.table), wanted, world);
  for (const sentence of left) world.complain(`${printable(`${read.name}: note: ${sentence}`)}\n`);
  if (files.length === 0) throw new Unusable(`${read.name}: nothing was written`);
  return engine.outcome();
}

export const exportCommand: Command = {
  name: 'export',
  usage: `drillhand export FILE --format ${ids.join('|')} -o PATH`,
  summary: 'Write the record of a log in a format that other programs read.',
  options: [
    choiceOption('format', ids, 'what to write'),
    valueOption('output', 'PATH', 'the file to write, a folder for csv, or "-" for standard output', { short: 'o' }),
    valueOption('table', 'NAME', 'of csv, this table alone, such as strata'),
    todayOption,
  ],
  notes: [
    'FILE is a log, a record that was exported as JSON, or "-" for standard input.',
    'What a format cannot carry is told on the error output. GroundWaterML is version 2.2, LAS version 2.0.',
    'CSV cells that a spreadsheet would take for a formula begin with an apostrophe.',
    `"--format ${notation}" gives back the log, comments and all, that a JSON record was made of.`,
  ],
  run,
};
