import { Buffer } from 'node:buffer';
import { describe, expect, test } from 'vitest';
import { drillhand, messages } from './fake-world.ts';
import { sound } from './logs.ts';

const checked = (content: string | Uint8Array, args: string[] = []) =>
  drillhand(['check', 'a.well', ...args], { 'a.well': content });

const utf16le = (text: string) => Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, 'utf16le')]);
const utf16be = (text: string) => utf16le(text).swap16();

describe('what is no text of a log', () => {
  test.each<[string, Uint8Array | string, string]>([
    ['a NUL byte', 'well A\nstr\0ata', 'a.well:2:4: a NUL character, as in a binary file; a log is plain text'],
    ['the head of a PNG', Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'), 'a.well:3:1: a NUL character'],
    ['Latin-1', Buffer.from('well A\nowner Zo\xeb\n', 'latin1'), 'a.well:2:9: not UTF-8 text (byte 0xEB)'],
    ['a cut sequence', Buffer.from([0x77, 0xc3]), 'a.well:1:2: not UTF-8 text (byte 0xC3)'],
    ['UTF-8 with a mark, spoilt', Buffer.from([0xef, 0xbb, 0xbf, 0x41, 0x0a, 0xff]), 'a.well:2:1: not UTF-8 text'],
    ['UTF-16 of an odd length', Buffer.from([0xff, 0xfe, 0x41]), 'a.well:1:1: its mark says UTF-16LE'],
    ['an empty file', '', 'a.well:1:1: the file is empty'],
    ['nothing but blanks', ' \r\n\t\n', 'a.well:1:1: the file is empty'],
    ['a lone byte order mark', '\ufeff', 'a.well:1:1: the file is empty'],
  ])('%s is told once, with its place', async (_, content, message) => {
    const { code, output, errors } = await checked(content);
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(errors.startsWith(`drillhand: ${message}`)).toBe(true);
    expect(messages(errors)).toBe(1);
  });
});

describe('what is read all the same', () => {
  test.each<[string, string | Uint8Array]>([
    ['no end of the last line', sound.trimEnd()],
    ['CRLF', sound.replaceAll('\n', '\r\n')],
    ['CR', sound.replaceAll('\n', '\r')],
    ['a byte order mark', `\ufeff${sound}`],
  ])('%s', async (_, content) => {
    const { code, output, errors } = await checked(content);
    expect({ code, output, errors }).toEqual({ code: 0, output: 'no findings in 1 file\n', errors: '' });
  });

  test.each([
    ['LE', utf16le],
    ['BE', utf16be],
  ])('UTF-16%s with its mark, with a note', async (order, encoded) => {
    const { code, output, errors } = await checked(encoded(sound));
    expect({ code, output }).toEqual({ code: 0, output: 'no findings in 1 file\n' });
    expect(errors).toBe(`a.well: note: read as UTF-16${order}; save it as UTF-8 for other programs\n`);
  });
});

describe('what the rules tell, once and with its place', () => {
  test.each([
    ['NaN', 'strata\n  0 - NaN clay\n', '2:'],
    ['Infinity', 'strata\n  0 - Infinity clay\n', '2:'],
    ['an exponent', 'strata\n  0 - 1e400 clay\n', '2:'],
    ['a keyword that nobody knows', 'well A\nflumdiddle 3 of them\n', '2:1'],
  ])('%s', async (_, text, place) => {
    const { code, output } = await checked(text);
    expect(code).toBe(1);
    const places = output.split('\n').filter((line) => line.startsWith('a.well:'));
    expect(places.filter((line) => line.includes(': error '))).toHaveLength(1);
    expect(places[0]).toContain(`a.well:${place}`);
  });

  test('50 MB of one line', { timeout: 120_000 }, async () => {
    const { code, output } = await checked(`strata\n  0 - 3 ${'clay '.repeat(10_000_000)}`);
    expect(code).toBe(1);
    expect(output.length).toBeLessThan(1000);
    expect(output).toMatch(/^a\.well:2:1: error line-too-long: /);
    expect(output).toMatch(/1 error in 1 file\n$/);
  });
});

describe('packs', () => {
  const pack = {
    id: 'fenmarrow',
    title: 'Fenmarrow County',
    notice: 'A help for checking, not the law.',
    limits: {
      'stickup-least': { value: 0.6, unit: 'm', text: '60 cm', source: 'made up', known: 'read', date: null },
    },
  };
  const log = [
    'well KH-04',
    'strata',
    '0 - 20 sand',
    'casing +0.45 - 20 pvc 114.3 sdr 26',
    '  grout 0 - 20 neat cement',
  ];
  const withPack = (text: string, name = 'pack.json') =>
    drillhand(['check', 'a.well', '--rules', name], { 'a.well': log.join('\n'), [name]: text });

  test('a pack in a file is in force', async () => {
    const without = await drillhand(['check', 'a.well'], { 'a.well': log.join('\n') });
    expect(without.output).not.toContain('stickup-low');
    expect((await withPack(JSON.stringify(pack))).output).toContain('stickup-low');
  });

  test.each([
    ['not JSON', '{\n  "id": fen\n}', 'pack.json:2:9: not JSON: fen is not a JSON value'],
    ['cut off', '{"id": "fen"', 'pack.json:1:13: not JSON: expected "," or "}"'],
    ['another shape', '{\n "id": "fen",\n "title": 3\n}', 'pack.json:3:11: not a rule pack at title: '],
    [
      'a limit that is no number',
      JSON.stringify(
        { ...pack, limits: { 'stickup-least': { ...pack.limits['stickup-least'], value: '60' } } },
        null,
        1,
      ),
      'pack.json:7:13: not a rule pack at limits.stickup-least.value: ',
    ],
    [
      'an unknown limit',
      JSON.stringify({ ...pack, limits: { stickup: 3 } }, null, 1),
      'pack.json:6:3: not a rule pack at limits.stickup: ',
    ],
  ])('%s is told once, with its place', async (_, text, message) => {
    const { code, errors } = await withPack(text);
    expect(code).toBe(2);
    expect(errors.startsWith(`drillhand: ${message}`)).toBe(true);
    expect(messages(errors)).toBe(1);
  });

  test.each([
    [['--rules', 'generl'], 'drillhand: there is no rule pack "generl"; did you mean "general"?\n'],
    [['--rules', 'general,zorgly'], 'drillhand: there is no rule pack "zorgly"; known are general\n'],
    [['--rules', 'general', '--rules', 'general,'], 'drillhand: --rules has an empty name\n'],
    [['--rules', './gone.json'], 'drillhand: ./gone.json: no such file or folder\n'],
  ])('%j cannot be used', async (args, message) => {
    const { code, errors } = await checked(sound, args);
    expect(code).toBe(2);
    expect(errors.startsWith(message.replace('general\n', ''))).toBe(true);
    expect(messages(errors)).toBe(1);
  });
});
