import { Buffer } from 'node:buffer';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { deepLog } from '../drawing/logs.ts';
import { drillhand } from './fake-world.ts';
import { sound } from './logs.ts';

const files = { 'k.well': sound, 'deep.well': deepLog(300) };

const draw = (...args: string[]) => drillhand(['draw', 'k.well', ...args], files);

const textOf = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString('utf8');

describe('the ending says what is written', () => {
  test.each([
    ['k.svg', /^<\?xml/],
    ['k.png', /^\ufffdPNG/],
    ['k.PDF', /^%PDF-1\.7/],
    ['k.html', /^<!doctype html>/],
  ])('%s', async (name, begins) => {
    const outcome = await draw('-o', name);
    expect(outcome).toMatchObject({ code: 0, output: '', errors: '' });
    expect(textOf(outcome.files.get(name))).toMatch(begins);
  });

  test('another ending is refused, and the known ones are named', async () => {
    const { code, errors } = await draw('-o', 'k.dxf');
    expect({ code, errors }).toEqual({
      code: 2,
      errors: 'drillhand: a drawing is written as .svg, .png, .pdf, .html; "k.dxf" ends in none of them\n',
    });
  });
});

test('the same log and day give the same bytes, the day stands in the PDF', async () => {
  const pdfOn = async (day: string) =>
    (await draw('-o', 'k.pdf', '--today', day)).files.get('k.pdf') ?? new Uint8Array();
  const [first, again, later] = [await pdfOn('2026-11-25'), await pdfOn('2026-11-25'), await pdfOn('2026-11-26')];
  expect(Buffer.compare(first, again)).toBe(0);
  expect(Buffer.compare(first, later)).not.toBe(0);
  const document = await PDFDocument.load(first, { updateMetadata: false });
  expect(document.getCreationDate()).toEqual(new Date('2026-11-25T00:00:00Z'));
});

test('only the columns that are named are drawn', async () => {
  const { output } = await draw('-o', '-', '--columns', 'depth, lithology');
  expect(output).toContain('class="dh-layer"');
  expect(output).not.toContain('class="dh-description"');
  expect((await draw('-o', '-', '--columns', 'depth,geology')).errors).toMatch(
    /there is no column "geology"; --columns takes some of depth,elevation,lithology,/,
  );
});

test('a scale is a number, with or without its 1:', async () => {
  const scaled = await draw('-o', '-', '--scale', '1:500');
  expect(scaled.output).toContain('Depths 1:500 when printed at full size');
  expect((await draw('-o', '-', '--scale', '500')).output).toBe(scaled.output);
  expect((await draw('-o', '-', '--scale', 'large')).errors).toContain('--scale takes a number such as 200');
  expect((await draw('-o', '-', '--scale', '-5')).code).toBe(2);
});

test('sheets of paper go into numbered files, a PDF holds them all', async () => {
  const svg = await drillhand(['draw', 'deep.well', '-o', 'out/deep.svg', '--page', 'letter', '--scale', '500'], files);
  const names = [...svg.files.keys()].filter((name) => name.endsWith('.svg'));
  expect(names.length).toBeGreaterThan(1);
  expect(names).toEqual(names.map((_, n) => `out/deep-${n + 1}.svg`));
  const pdf = await drillhand(['draw', 'deep.well', '-o', 'deep.pdf', '--page', 'letter', '--scale', '500'], files);
  const document = await PDFDocument.load(pdf.files.get('deep.pdf') ?? new Uint8Array());
  expect(document.getPageCount()).toBe(names.length);
  const toOutput = await drillhand(['draw', 'deep.well', '-o', '-', '--page', 'letter', '--scale', '500'], files);
  expect(toOutput.errors).toContain('do not go to standard output; name a file');
});

test('a dark drawing is dark', async () => {
  expect((await draw('-o', '-', '--theme', 'dark')).output).toContain('fill="#1f2123"');
});

test('characters that the fonts lack are told, on the error output', async () => {
  const { code, errors } = await drillhand(['draw', '-', '-o', 'a.pdf'], {}, { input: 'well 井 4\n' });
  expect({ code, errors }).toEqual({
    code: 0,
    errors: 'note: Characters that the fonts of the file do not have stand as boxes or are left out: 井.\n',
  });
});

test('one sheet of paper for a long log says that its words are small, and is drawn', async () => {
  const {
    code,
    errors,
    files: written,
  } = await drillhand(['draw', 'deep.well', '-o', 'd.svg', '--layout', 'page'], files);
  expect({ code, errors }).toEqual({ code: 0, errors: expect.stringMatching(/smaller than 5 pt; .*--layout pages/) });
  expect(textOf(written.get('d.svg'))).toMatch(/^<\?xml/);
  expect((await draw('-o', 'k.svg', '--layout', 'page')).errors).toBe('');
});
