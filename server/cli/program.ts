import { nearNames } from '../rules/near-names.ts';
import { didYouMean, readArguments } from './arguments.ts';
import { type Command, type Option, switchOption } from './command.ts';
import { check } from './commands/check.ts';
import { draw } from './commands/draw.ts';
import { exportCommand } from './commands/export.ts';
import { format } from './commands/format.ts';
import { list } from './commands/list.ts';
import { map } from './commands/map.ts';
import { questions } from './commands/questions.ts';
import { read } from './commands/read.ts';
import { record } from './commands/record.ts';
import { rules } from './commands/rules.ts';
import { schema } from './commands/schema.ts';
import { section } from './commands/section.ts';
import { type Exit, exit } from './exit.ts';
import { tolerating } from './inputs.ts';
import { printable } from './printable.ts';
import { dayFrom } from './today.ts';
import { Unusable } from './unusable.ts';
import { version } from './version.ts';
import type { World } from './world.ts';

const commands: readonly Command[] = [
  check,
  record,
  draw,
  map,
  section,
  exportCommand,
  format,
  list,
  questions,
  read,
  rules,
  schema,
];

const helpOption = switchOption('help', 'tell what this command does', 'h');
const versionOption = switchOption('version', 'print the version');

const optionName = ({ name, short, value }: Option): string =>
  `${short === null ? '' : `-${short}, `}--${name}${value === null ? '' : ` ${value}`}`;

function columns(rows: readonly (readonly [string, string])[]): string[] {
  const width = rows.reduce((most, [name]) => Math.max(most, name.length), 0);
  return rows.map(([name, says]) => `  ${name.padEnd(width)}  ${says}`);
}

const asText = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

const commandHelp = ({ usage, summary, options, notes }: Command): string =>
  asText([
    `Usage: ${usage}`,
    '',
    summary,
    '',
    'Options:',
    ...columns([...options, helpOption].map((each) => [optionName(each), each.says])),
    ...(notes.length === 0 ? [] : ['', ...notes]),
  ]);

const programHelp = asText([
  'Usage: drillhand COMMAND [arguments]',
  '',
  'Checks, computes and draws the logs of drilled wells, written as text in .well files.',
  '',
  'Commands:',
  ...columns(commands.map(({ name, summary }) => [name, summary])),
  '',
  'Options:',
  ...columns([helpOption, versionOption].map((each) => [optionName(each), each.says])),
  '',
  '"drillhand COMMAND --help" tells more of one command.',
  'DRILLHAND_TODAY=YYYY-MM-DD in the environment stands for the day to check dates against.',
]);

function commandNamed(name: string): Command {
  const found = commands.find((each) => each.name === name);
  if (found) return found;
  const names = commands.map((each) => each.name);
  throw new Unusable(
    `there is no command "${name}"${didYouMean(nearNames(name, names)) || `; known are ${names.join(', ')}`}`,
  );
}

async function runCommand(command: Command, args: readonly string[], world: World): Promise<Exit> {
  const given = readArguments(args, [...command.options, helpOption]);
  if (given.has('help')) {
    world.print(commandHelp(command));
    return exit.clean;
  }
  dayFrom(world.today, 'DRILLHAND_TODAY');
  return command.run(given, world);
}

function runWithoutCommand(args: readonly string[], world: World): Exit {
  const given = readArguments(args, [helpOption, versionOption]);
  if (given.has('version')) world.print(`${version}\n`);
  else if (given.has('help')) world.print(programHelp);
  else {
    world.complain(programHelp);
    return exit.unusable;
  }
  return exit.clean;
}

function dispatch(args: readonly string[], world: World): Promise<Exit> | Exit {
  const [name, ...rest] = args;
  if (name === undefined || name.startsWith('-')) return runWithoutCommand(args, world);
  if (name !== 'help') return runCommand(commandNamed(name), rest, world);
  const [asked] = rest;
  world.print(asked === undefined ? programHelp : commandHelp(commandNamed(asked)));
  return exit.clean;
}

/** Runs one command line. Whatever goes wrong is told in one message; never rejects. */
export async function runProgram(args: readonly string[], world: World): Promise<Exit> {
  try {
    return await tolerating(world, async () => dispatch(args, world));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    world.complain(`drillhand: a fault of the program itself: ${printable(reason)}; please report it with the log\n`);
    return exit.unusable;
  }
}
