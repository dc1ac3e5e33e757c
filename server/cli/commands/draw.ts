import { basename, dirname, extname, join } from 'node:path';
import { type ColumnId, columnIds, type DrawingOptions, type Layout } from '../../drawing/index.ts';
import { type DrawFile, drawFiles, type FileWishes } from '../../export/files/index.ts';
import { type Arguments, type Command, choiceOption, valueOption } from '../command.ts';
import { engineFor } from '../engine.ts';
import type { Exit } from '../exit.ts';
import { readLog, singleInput } from '../inputs.ts';
import { printOrWrite } from '../outputs.ts';
import { printable } from '../printable.ts';
import { todayOption } from '../today.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

const layouts = ['continuous', 'page', 'pages'] as const satisfies readonly Layout[];
const formats = Object.keys(drawFiles) as DrawFile[];
const isFormat = (name: string): name is DrawFile => (formats as string[]).includes(name);

const isColumn = (name: string): name is ColumnId => (columnIds as readonly string[]).includes(name);

/** The kind of file, by the ending of its name; what goes to standard output is SVG. */
function formatOf(output: string): DrawFile {
  const ending = output === '-' ? 'svg' : extname(output).slice(1).toLowerCase();
  if (isFormat(ending)) return ending;
  throw new Unusable(`a drawing is written as .${formats.join(', .')}; "${output}" ends in none of them`);
}

function columnsFrom(given: Arguments): Partial<DrawingOptions> {
  const names = given
    .value('columns')
    ?.split(',')
    .map((name) => name.trim());
  if (names === undefined) return {};
  const unknown = names.find((name) => !isColumn(name));
  if (unknown !== undefined)
    throw new Unusable(`there is no column "${unknown}"; --columns takes some of ${columnIds.join(',')}`);
  return { columns: names.filter(isColumn) };
}

function scaleFrom(given: Arguments): Partial<DrawingOptions> {
  const text = given.value('scale')?.replace(/^1:/, '');
  if (text === undefined) return {};
  const scale = Number(text);
  if (Number.isFinite(scale) && scale > 0) return { scale };
  throw new Unusable(`--scale takes a number such as 200, for 1:200; "${text}" is none`);
}

function pageFrom(given: Arguments): Partial<DrawingOptions> {
  const page = given.value('page');
  if (page === 'continuous') return { layout: 'continuous' };
  return page === 'a4' || page === 'letter' ? { layout: 'pages', paper: page } : {};
}

const isLayout = (name: string | null): name is Layout => (layouts as readonly (string | null)[]).includes(name);

function layoutFrom(given: Arguments): Partial<DrawingOptions> {
  const layout = given.value('layout');
  return isLayout(layout) ? { layout } : {};
}

const wishesFrom = (given: Arguments): FileWishes => ({
  drawing: { ...columnsFrom(given), ...scaleFrom(given), ...pageFrom(given), ...layoutFrom(given) },
  theme: given.value('theme') === 'dark' ? 'dark' : 'print',
});

async function run(given: Arguments, world: World): Promise<Exit> {
  const output = given.value('output');
  if (output === null)
    throw new Unusable(`say where the drawing goes: -o FILE.${formats.join('|')}, or -o - for SVG on standard output`);
  const [format, wishes] = [formatOf(output), wishesFrom(given)];
  const input = await singleInput(given.positionals, world);
  const engine = await engineFor(given, world);
  const { record, findings, lines: source } = await engine.analyse(await readLog(input, world));
  const name = basename(output, extname(output));
  const context = { source, findings, name, today: engine.today, asset: world.asset };
  const { files, left } = await drawFiles[format](record, context, wishes);
  if (output === '-' && files.length > 1)
    throw new Unusable(`the drawing has ${files.length} sheets, which do not go to standard output; name a file`);
  for (const file of files) {
    const to = files.length === 1 ? output : join(dirname(output), file.name);
    await printOrWrite(input, to, file.content, world);
  }
  for (const sentence of left) world.complain(`${printable(`note: ${sentence}`)}\n`);
  return engine.outcome();
}

export const draw: Command = {
  name: 'draw',
  usage: 'drillhand draw FILE -o FILE.svg|png|pdf|html [options]',
  summary: 'Draw the well to scale, or write its record as a page for print.',
  options: [
    valueOption('output', 'FILE', 'the file to write, or "-" for SVG on standard output', { short: 'o' }),
    valueOption('columns', 'NAMES', `which columns, in this order: some of ${columnIds.join(',')}`),
    choiceOption('page', ['a4', 'letter', 'continuous'], 'sheets of paper (PDF: a4), or one as long as it needs'),
    choiceOption(
      'layout',
      layouts,
      'as long as it needs, all on one sheet of paper, or on several (--page says which)',
    ),
    valueOption('scale', 'NUMBER', 'draw depths 1 to this, where the words find room'),
    choiceOption('theme', ['print', 'dark'], 'colours of SVG and PNG (default: print)'),
    todayOption,
  ],
  notes: [
    'FILE is a log, or "-" for standard input. A drawing shows what the log says, right or wrong.',
    'Several sheets go into several files, NAME-1.svg, NAME-2.svg and so on; a PDF holds them all.',
    'A PDF has the plots of the tests and of the fills too, each on a sheet of its own.',
    'The same log and day give the same file, byte for byte.',
  ],
  run,
};
