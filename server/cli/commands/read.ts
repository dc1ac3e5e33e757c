import { formatText } from '../../features/format.ts';
import { decodeNotes } from '../../import/decode.ts';
import { type Entry, type Question, type ReadNotes, type ReadOptions, readNotes } from '../../import/index.ts';
import { packById, packs } from '../../packs/index.ts';
import { nearNames } from '../../rules/near-names.ts';
import { didYouMean } from '../arguments.ts';
import { type Arguments, type Command, choiceOption, valueOption } from '../command.ts';
import { type Exit, exit } from '../exit.ts';
import { type Input, singleInput } from '../inputs.ts';
import { printOrWrite } from '../outputs.ts';
import { printable } from '../printable.ts';
import { reasonOf, Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

const mostTold = 50;

async function notesIn(input: Input, world: World): Promise<string> {
  let bytes: Uint8Array;
  try {
    bytes = input.path === null ? await world.readInput() : await world.readFile(input.path);
  } catch (error) {
    throw new Unusable(`${input.name}: ${reasonOf(error)}`);
  }
  const decoded = decodeNotes(bytes);
  if ('reason' in decoded) throw new Unusable(`${input.name}: ${decoded.reason}`);
  if (decoded.note !== null) world.complain(`${printable(input.name)}: note: ${decoded.note}\n`);
  if (decoded.text.trim() === '')
    throw new Unusable(`${input.name}:1:1: the file is empty; there are no notes to read`);
  return decoded.text;
}

function packId(given: Arguments): string | null {
  const id = given.value('pack');
  if (id === null || packById(id)) return id;
  const ids = packs.map((each) => each.id);
  throw new Unusable(
    `there is no rule pack "${id}"${didYouMean(nearNames(id, ids)) || `; known are ${ids.join(', ')}`}`,
  );
}

const optionsOf = (given: Arguments): Partial<ReadOptions> => ({
  units: given.value('units') as ReadOptions['units'],
  gallon: given.value('gallon') as ReadOptions['gallon'],
  dates: given.value('dates') as ReadOptions['dates'],
  layers: given.value('layers') as ReadOptions['layers'],
  columns: given.value('columns'),
  pack: packId(given),
});

/** An argument as a shell takes it. */
const quoted = (text: string): string => (/^[\w@%+=:,./-]+$/.test(text) ? text : `'${text.replaceAll("'", `'\\''`)}'`);

/** The command line that answers a question, ready to be run. */
function answered({ about, answers }: Question, input: Input, given: Arguments): string {
  const kept = ['units', 'gallon', 'dates', 'layers', 'columns', 'pack', 'output'].flatMap((name) => {
    const value = name === about ? null : given.value(name);
    return value === null ? [] : [`--${name} ${quoted(value)}`];
  });
  const commands = answers.map(
    (answer) => `  drillhand read ${[quoted(input.path ?? '-'), ...kept, `--${about} ${quoted(answer)}`].join(' ')}`,
  );
  return commands.join('\n');
}

function ask(question: Question, input: Input, given: Arguments): string {
  const { line, says, about, answers } = question;
  const place = `${input.name}:${line}`;
  if (answers.length === 0)
    return `${place}: ${says}; name the columns: --columns from=COLUMN,to=COLUMN,description=COLUMN`;
  const lead = about === 'columns' && answers.length === 1 ? 'if this proposal is right, run' : 'say which';
  return `${place}: ${says}; ${lead}:\n${answered(question, input, given)}`;
}

const told = ({ first, source, why, status }: Entry, name: string): string =>
  `${name}:${first}: ${status === 'not' ? 'not understood' : 'in part'}: ${(source[0] ?? '').trim().slice(0, 80)}\n${why.map((each) => `    ${each}`).join('\n')}`;

function summary(read: ReadNotes, input: Input, given: Arguments): string {
  const open = read.entries.filter(({ status }) => status !== 'understood');
  const parts = open.filter(({ status }) => status === 'partly').length;
  const lines = [
    ...read.troubles.map(({ line, says }) => `${input.name}:${line}: note: ${says}`),
    ...open.slice(0, mostTold).map((entry) => told(entry, input.name)),
    ...(open.length > mostTold ? [`… and ${open.length - mostTold} more, each told in the text`] : []),
    ...read.questions.map((question) => ask(question, input, given)),
    `${input.name}: ${read.entries.length - open.length} of ${read.entries.length} lines understood, ${parts} in part, ${open.length - parts} not`,
  ];
  return printable(`${lines.join('\n')}\n`);
}

async function run(given: Arguments, world: World): Promise<Exit> {
  const input = await singleInput(given.positionals, world);
  const options = optionsOf(given);
  const read = readNotes(await notesIn(input, world), options);
  const blocking = read.questions.find((question) => question.blocking);
  if (blocking) throw new Unusable(ask(blocking, input, given));
  await printOrWrite(input, given.value('output') ?? '-', formatText(read.text), world);
  const isClean = read.questions.length === 0 && read.entries.every(({ status }) => status === 'understood');
  if (!isClean || read.troubles.length > 0) world.complain(summary(read, input, given));
  return isClean ? exit.clean : exit.found;
}

export const read: Command = {
  name: 'read',
  usage: 'drillhand read NOTES [--units m|ft] [options]',
  summary: 'Make a log from field notes: plain text as crews write it, or a table of intervals (CSV, tabs, pasted).',
  options: [
    choiceOption('units', ['m', 'ft'], 'the unit of depths that are written without one'),
    choiceOption('gallon', ['us', 'imp'], 'which gallon the notes mean'),
    choiceOption('dates', ['dmy', 'mdy'], 'what 5/7/2026 is: day first, or month first'),
    choiceOption('layers', ['thickness', 'bases', 'tops'], 'what the one figure of each layer is'),
    valueOption('columns', 'MAP', 'the columns of a table, as from=TopDepth,to=BotDepth,description=Litho'),
    valueOption('pack', 'ID', 'the rule pack that the log is to be checked against'),
    valueOption('output', 'FILE', 'write to this file (default: print)', { short: 'o' }),
  ],
  notes: [
    'NOTES is a text or CSV file, or "-" for standard input; UTF-8, UTF-16 or Windows-1252.',
    'Every line of the notes stands as a comment above what was made of it; what was not understood stays a comment or a "?".',
    'Nothing is guessed: where the notes leave the unit open, or which column is what, the program asks and ends with 2.',
    'Columns are taken from the header without asking only if each part is named once and 95 of 100 cells fit it.',
    'A column of MAP is a name or a number counted from 1; A+B joins two. Parts: from, to, interval, thickness,',
    'description, colour, detail, remark, well, water. "to" alone is the base of each layer.',
    'Ends with 1 where something was not understood in full, or a question is open that kept a "?".',
  ],
  run,
};
