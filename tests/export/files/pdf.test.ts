import { Buffer } from 'node:buffer';
import { inflateSync } from 'node:zlib';
import { PDFDict, PDFDocument, PDFHexString, PDFName, PDFRawStream, PDFString } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { drawSheets, drawWell } from '../../../server/drawing/index.ts';
import { ellipse, filled, line, outlined, stroked } from '../../../server/drawing/shapes.ts';
import { drawFiles, noFileWishes } from '../../../server/export/files/index.ts';
import { pdfOf } from '../../../server/export/files/pdf.ts';
import { marksOf, number } from '../../../server/export/files/pdf-marks.ts';
import { hostileTexts } from '../../drawing/arbitrary.ts';
import { busyLog, deepLog, sampleLogs } from '../../drawing/logs.ts';
import { recordOf } from '../../record/record-of.ts';
import { shippedFile } from '../shipped-file.ts';
import { context } from './contexts.ts';

/** A log with two plots of its test and one of its fill. */
const testedLog = `well PT-1
hole
  0 - 60 152
casing 0 - 20 steel 114.3 x 6
  grout 0 - 20 neat cement, 0.2 m3
test pump 100 L/min, intake 50, 2026-05-07 08:00
  0    10
  1    12
  10   13
  100  14
`;

const pdfOfText = async (text: string): Promise<Uint8Array> => {
  const { files } = await drawFiles.pdf(recordOf(text), context, noFileWishes);
  return files[0]?.content as Uint8Array;
};

const open = (bytes: Uint8Array): Promise<PDFDocument> => PDFDocument.load(bytes, { updateMetadata: false });

const dictsOf = (document: PDFDocument): PDFDict[] =>
  document.context
    .enumerateIndirectObjects()
    .map(([, object]) => (object instanceof PDFRawStream ? object.dict : object))
    .filter((object) => object instanceof PDFDict);

const ofType = (document: PDFDocument, type: string): PDFDict[] =>
  dictsOf(document).filter((dict) => dict.get(PDFName.of('Type')) === PDFName.of(type));

const streamsOf = (document: PDFDocument): string[] =>
  document.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFRawStream ? [object] : []))
    .filter((stream) => stream.dict.get(PDFName.of('Filter')) === PDFName.of('FlateDecode'))
    .map((stream) => inflateSync(Buffer.from(stream.contents)).toString('latin1'));

const textOf = (value: unknown): string =>
  value instanceof PDFHexString || value instanceof PDFString ? value.decodeText() : '';

/** The characters that the fonts of the file map their glyphs back to (ISO 32000-1, 9.10.3), fonts after another. */
const mapped = (streams: readonly string[]): Set<string> =>
  new Set(
    streams
      .filter((stream) => stream.includes('beginbfchar'))
      .flatMap((stream) => [...stream.matchAll(/^<[0-9a-f]+> <([0-9a-f]+)>/gim)])
      .map(([, code]) =>
        Buffer.from(code ?? '', 'hex')
          .swap16()
          .toString('utf16le'),
      ),
  );

describe('a PDF', () => {
  test('has the title, the language, the day and the tags of the drawing', async () => {
    const document = await open(await pdfOfText(busyLog));
    expect(document.getTitle()).toBe('Log of FM-12');
    expect(textOf(document.catalog.get(PDFName.of('Lang')))).toBe('en');
    expect(document.getCreationDate()).toEqual(new Date('2026-11-25T00:00:00Z'));
    expect(document.getModificationDate()).toEqual(new Date('2026-11-25T00:00:00Z'));
    const viewer = document.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
    expect(String(viewer.get(PDFName.of('DisplayDocTitle')))).toBe('true');
    expect(String(document.catalog.lookup(PDFName.of('MarkInfo'), PDFDict).get(PDFName.of('Marked')))).toBe('true');
    const kinds = ofType(document, 'StructElem').map((dict) => String(dict.get(PDFName.of('S'))));
    const each = Array.from(document.getPages());
    expect(kinds.sort()).toEqual(['/Document', ...each.map(() => '/Figure'), ...each.map(() => '/H1')]);
    const figure = ofType(document, 'StructElem').find((dict) => dict.has(PDFName.of('Alt')));
    expect(textOf(figure?.get(PDFName.of('Alt')))).toMatch(/^Drawing to scale: 7 layers[\s\S]*till, grey, hard/);
  });

  test('has its two fonts embedded, and its text as text', async () => {
    const document = await open(await pdfOfText('well Žďár-9 Łódź\nhole\n  0 - 20 150\nstrata\n  0 - 20 clay\n'));
    expect(ofType(document, 'FontDescriptor').map((dict) => dict.has(PDFName.of('FontFile2')))).toEqual([true, true]);
    const streams = streamsOf(document);
    expect([...mapped(streams)].join('')).toEqual(expect.stringMatching(/^(?=.*Ž)(?=.*ď)(?=.*Ł)(?=.*ź)/));
    expect(streams.some((stream) => / Tj ET/.test(stream))).toBe(true);
    expect(streams.join('')).not.toMatch(/ Do\b/);
  });

  test('is the same byte for byte for the same log and day, and another for another day', async () => {
    const first = await pdfOfText(busyLog);
    expect(Buffer.compare(first, await pdfOfText(busyLog))).toBe(0);
    const sheets = drawSheets(recordOf(busyLog), { layout: 'pages' });
    expect(Buffer.compare(first, await pdfOf(sheets, '2026-11-26', shippedFile))).not.toBe(0);
  });

  test('has the plots of tests and fills behind the drawing, each on a sheet of its own with its title', async () => {
    const record = recordOf(testedLog);
    const bytes = await pdfOfText(testedLog);
    const document = await open(bytes);
    const drawn = drawSheets(record, { layout: 'pages' }).length;
    expect(document.getPageCount()).toBe(drawn + 3);
    for (const page of document.getPages()) {
      // A4 of ISO 216: 210 by 297 mm, in points of 1/72 inch.
      expect(page.getWidth()).toBeCloseTo((210 / 25.4) * 72, 1);
      expect(page.getHeight()).toBeCloseTo((297 / 25.4) * 72, 1);
    }
    const kinds = ofType(document, 'StructElem').map((dict) => String(dict.get(PDFName.of('S'))));
    expect(kinds.filter((kind) => kind === '/H1')).toHaveLength(drawn + 3);
    const told = ofType(document, 'StructElem').map((dict) => textOf(dict.get(PDFName.of('Alt'))));
    expect(told.some((text) => text.startsWith('1 fill; the dashed line is what was required.'))).toBe(true);
    expect(Buffer.compare(bytes, await pdfOfText(testedLog))).toBe(0);
    expect(document.getTitle()).toBe('Log of PT-1');
  });

  test('has a page for each sheet, to its size', async () => {
    const sheets = drawSheets(recordOf(deepLog(300)), { layout: 'pages', paper: 'letter', scale: 500 });
    const document = await open(await pdfOf(sheets, '2026-11-25', shippedFile));
    expect(sheets.length).toBeGreaterThan(1);
    expect(document.getPageCount()).toBe(sheets.length);
    // 8.5 by 11 inches of 72 points (ANSI/ASME Y14.1).
    for (const page of document.getPages()) {
      expect(page.getWidth()).toBeCloseTo(612, 1);
      expect(page.getHeight()).toBeCloseTo(792, 1);
    }
  });

  test.each(sampleLogs.slice(0, 6))('of %s has no number that a reader cannot take', async (_, text) => {
    const pages = streamsOf(await open(await pdfOfText(text))).filter((stream) => stream.includes(' Tj ET'));
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) expect(page).not.toMatch(/NaN|Infinity|undefined|\de[+-]?\d/);
  });

  test.each(hostileTexts)('keeps a hostile name as text: %j', async (text) => {
    const record = recordOf('well A\nhole\n  0 - 5 100\nstrata\n  0 - 5 clay\n');
    const field = { text, span: { line: 0, start: 0, end: 1 } };
    const named = { ...record, log: { ...record.log, header: { well: field, site: field, owner: field } } };
    const document = await open(await pdfOf([drawWell(named)], '2026-11-25', shippedFile));
    expect(document.getPageCount()).toBe(1);
    const kinds = ofType(document, 'StructElem').map((dict) => String(dict.get(PDFName.of('S'))));
    expect(kinds.sort()).toEqual(['/Document', '/Figure', '/H1']);
  });

  test('says which characters its fonts do not have', async () => {
    const { left } = await drawFiles.pdf(recordOf('well 井 A\n'), context, noFileWishes);
    expect(left).toEqual(['Characters that the fonts of the file do not have stand as boxes or are left out: 井.']);
    expect((await drawFiles.pdf(recordOf('well Ångström ΔT\n'), context, noFileWishes)).left).toEqual([]);
  });
});

describe('the marks of a page', () => {
  const names = {
    set: (text: string, _bold: boolean, size: number) => ({ font: 'F', bytes: `<${text}>`, width: text.length * size }),
    tile: (id: string) => `Tile-${id}`,
    opacity: () => 'Half',
  };

  test('numbers have no exponent and three digits', () => {
    expect([number(1e-9), number(-0), number(Number.NaN), number(1 / 3), number(1e21)].slice(0, 4)).toEqual([
      '0',
      '0',
      '0',
      '0.333',
    ]);
  });

  test('a line, a fill and a pattern', () => {
    const points = [
      [1, 2],
      [3, 4],
    ] as const;
    expect(marksOf([line(points, stroked('ink', 0.3, [1, 0.5]))], names)).toBe(
      'q 0.102 0.102 0.102 RG 0.3 w [1 0.5] 0 d 1 2 m 3 4 l S Q',
    );
    expect(marksOf([ellipse(0, 0, 1, 1, filled('paper', 0.5))], names)).toMatch(
      /^q 1 1 1 rg \/Half gs 1 0 m 1 0\.552 0\.552 1 0 1 c /,
    );
    expect(marksOf([line(points, { ...outlined('ink', 'ink', 1), tile: 'g' })], names)).toContain(
      '/Pattern cs /Tile-g scn',
    );
  });

  test('an end-anchored text ends where it is told, and a slanted one leans', () => {
    const text = { kind: 'text', text: 'ab', size: 2, width: 9, bold: false, paint: 'ink', x: 10, y: 5 } as const;
    expect(marksOf([{ ...text, italic: false, anchor: 'end' }], names)).toContain('1 0 0 -1 6 5 Tm');
    expect(marksOf([{ ...text, italic: true, anchor: 'start' }], names)).toContain('1 0 0.213 -1 10 5 Tm');
  });
});
