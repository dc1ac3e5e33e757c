import { Buffer } from 'node:buffer';
import { describe, expect, test } from 'vitest';
import { drillhand } from './fake-world.ts';
import { sound } from './logs.ts';

const typed = 'strata\n0-3 cl\n-6 sd';
const long = 'strata\n  0    - 3      clay\n       - 6      sand';

const text = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString('utf8');

describe('format', () => {
  test('prints the long form', async () => {
    const { code, output, files } = await drillhand(['format', 'a.well'], { 'a.well': typed });
    expect({ code, output }).toEqual({ code: 0, output: long });
    expect(text(files.get('a.well'))).toBe(typed);
    expect((await drillhand(['format', '-'], {}, { input: typed })).output).toBe(long);
  });

  test('--check lists what is not formatted', async () => {
    const { code, output, files } = await drillhand(['format', '--check', '.', 'a.well', 'b.well'], {
      './c.well': sound,
      'a.well': typed,
      'b.well': long,
    });
    expect({ code, output }).toEqual({ code: 1, output: 'a.well\n' });
    expect(text(files.get('a.well'))).toBe(typed);
  });

  test('--write rewrites what is not formatted, and nothing else', async () => {
    const before = Buffer.from(long);
    const { code, output, files } = await drillhand(['format', '--write', 'a.well', 'b.well'], {
      'a.well': typed,
      'b.well': before,
    });
    expect({ code, output }).toEqual({ code: 0, output: 'a.well\n' });
    expect(text(files.get('a.well'))).toBe(long);
    expect(files.get('b.well')).toBe(before);
  });

  test.each([
    ['CRLF', (each: string) => each.replaceAll('\n', '\r\n')],
    ['a byte order mark', (each: string) => `\ufeff${each}`],
    ['an end of the last line', (each: string) => `${each}\n`],
  ])('keeps %s', async (_, dressed) => {
    const { files } = await drillhand(['format', '--write', 'a.well'], { 'a.well': dressed(typed) });
    expect(text(files.get('a.well'))).toBe(dressed(long));
  });

  test('keeps UTF-16', async () => {
    const encoded = (each: string) => Buffer.from(`\ufeff${each}`, 'utf16le').swap16();
    const { files } = await drillhand(['format', '--write', 'a.well'], { 'a.well': encoded(typed) });
    expect(Buffer.from(files.get('a.well') ?? [])).toEqual(encoded(long));
  });

  test('an empty file is formatted', async () => {
    expect(await drillhand(['format', '--check', 'a.well'], { 'a.well': '' })).toMatchObject({ code: 0, errors: '' });
  });

  test('what cannot be written is told, and the others are written', async () => {
    const standard = await drillhand(['format', '--write', '-', 'a.well'], { 'a.well': typed }, { input: typed });
    expect(standard).toMatchObject({ code: 2, output: 'a.well\n' });
    expect(standard.errors).toBe('drillhand: standard input cannot be written; leave --write away to print\n');
    const denied = await drillhand(['format', '--write', 'a.well'], { 'a.well': typed }, { writeError: 'EACCES' });
    expect(denied).toMatchObject({ code: 2, errors: 'drillhand: a.well: not written: no permission\n' });
  });
});
