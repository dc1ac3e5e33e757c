import { describe, expect, test } from 'vitest';
import { version } from '../../package.json';
import { drillhand, messages } from './fake-world.ts';
import { sound } from './logs.ts';

const commands = [
  'check',
  'record',
  'draw',
  'map',
  'section',
  'export',
  'format',
  'list',
  'questions',
  'read',
  'rules',
  'schema',
];

describe('help', () => {
  test.each(commands)('%s --help tells its usage', async (command) => {
    const { code, output, errors } = await drillhand([command, '--help']);
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    expect(output.startsWith(`Usage: drillhand ${command}`)).toBe(true);
    expect((await drillhand(['help', command])).output).toBe(output);
  });

  test('the program tells its commands', async () => {
    const { code, output } = await drillhand(['--help']);
    expect(code).toBe(0);
    for (const command of commands) expect(output).toMatch(new RegExp(`^ {2}${command} `, 'm'));
    expect((await drillhand(['help'])).output).toBe(output);
  });

  test('no arguments: the same, as a complaint', async () => {
    const { code, output, errors } = await drillhand([]);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toBe((await drillhand(['--help'])).output);
  });

  test('the version is that of the package', async () => {
    expect((await drillhand(['--version'])).output).toBe(`${version}\n`);
  });
});

describe('arguments that cannot be used', () => {
  test.each([
    [['chek'], 'there is no command "chek"; did you mean "check"?'],
    [['zzz'], 'there is no command "zzz"; known are check, record, draw, '],
    [['check', 'a.well', '--fromat', 'json'], 'there is no option --fromat; did you mean "--format"?'],
    [['check', 'a.well', '-x'], 'there is no option -x'],
    [['check', 'a.well', '--format'], '--format needs a value: text|json|sarif'],
    [['check', 'a.well', '--format', 'jsno'], '--format takes text, json, sarif; "jsno" is none of them'],
    [['check', 'a.well', '--format', 'text', '--format', 'json'], '--format is given twice'],
    [['format', 'a.well', '--check=yes'], '--check takes no value, but has "yes"'],
    [['format', 'a.well', '--check', '--write'], '--check and --write do not go together; give one'],
    [['record'], 'name a file, or "-" for standard input'],
    [['record', 'a.well', 'b.well'], 'one file at a time; "b.well" is one too many'],
    [['record', '*.well'], '*.well: one file at a time; this names 2'],
    [['draw', 'a.well'], 'say where the drawing goes: -o FILE.svg|png|pdf|html, or -o - for SVG on standard output'],
    [['rules', 'missing-sho'], 'there is no rule "missing-sho"; did you mean "missing-shoe"?'],
    [['rules', 'a', 'b'], 'one rule at a time; "b" is one too many'],
    [['schema'], 'name a schema: record, pack, settings'],
    [['schema', 'recrod'], 'there is no schema "recrod"; did you mean "record"?'],
    [['help', 'chek'], 'there is no command "chek"; did you mean "check"?'],
    [['--versoin'], 'there is no option --versoin; did you mean "--version"?'],
  ])('%j', async (args, message) => {
    const { code, output, errors } = await drillhand(args, { 'a.well': sound, 'b.well': sound });
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors.startsWith(`drillhand: ${message}`)).toBe(true);
    expect(messages(errors)).toBe(1);
  });

  test('a file may begin with a dash after --', async () => {
    expect((await drillhand(['check', '--', '-odd.well'], { '-odd.well': sound })).code).toBe(0);
  });
});
