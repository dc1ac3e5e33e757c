import { Buffer } from 'node:buffer';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { drawingFile, drawWell } from '../../../server/drawing/index.ts';
import { drawFiles, fileFormats, noFileWishes } from '../../../server/export/files/index.ts';
import { leaned } from '../../../server/export/files/lean.ts';
import { pngOf } from '../../../server/export/files/png.ts';
import { checksum, withTitle } from '../../../server/export/files/png-title.ts';
import type { ExportedFile } from '../../../server/export/format.ts';
import { hostileTexts } from '../../drawing/arbitrary.ts';
import { busyLog, deepLog } from '../../drawing/logs.ts';
import { recordOf } from '../../record/record-of.ts';
import { context } from './contexts.ts';

const small = 'well A\nhole\n  0 - 5 100\nstrata\n  0 - 5 clay\n';

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
  readonly check: number;
}

/** The chunks of a PNG, as its specification (W3C, third edition, section 5) lays them out. */
function chunksOf(content: ExportedFile['content'] | undefined): Chunk[] {
  const png = Buffer.from(content as Uint8Array);
  const chunks: Chunk[] = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    chunks.push({
      type: png.toString('latin1', at + 4, at + 8),
      data: png.subarray(at + 8, at + 8 + length),
      check: png.readUInt32BE(at + 8 + length),
    });
    at += 12 + length;
  }
  return chunks;
}

describe('a PNG', () => {
  test('has 200 dots per inch, the title of the drawing, and is the same each time', async () => {
    const [first, second] = [
      await drawFiles.png(recordOf(small), context, noFileWishes),
      await drawFiles.png(recordOf(small), context, noFileWishes),
    ];
    expect(Buffer.compare(first.files[0]?.content as Uint8Array, second.files[0]?.content as Uint8Array)).toBe(0);
    const [header, title] = chunksOf(first.files[0]?.content);
    expect(header?.type).toBe('IHDR');
    expect(header?.data.readUInt32BE(0)).toBe(Math.round((190 / 25.4) * 200));
    expect(title?.type).toBe('iTXt');
    expect(title?.data.toString('utf8')).toBe('Title\0\0\0\0\0Log of A');
  });

  test('is drawn with the faces that are shipped: the same words in another face are another picture', async () => {
    const swapped = async (name: string) => context.asset(name === 'arimo-regular.ttf' ? 'arimo-bold.ttf' : name);
    const own = await drawFiles.png(recordOf(small), context, noFileWishes);
    const other = await drawFiles.png(recordOf(small), { ...context, asset: swapped }, noFileWishes);
    expect(Buffer.compare(own.files[0]?.content as Uint8Array, other.files[0]?.content as Uint8Array)).not.toBe(0);
  });

  test('leans the words that are slanted, though no slanted face is shipped', async () => {
    const drawing = drawWell(recordOf(small));
    const upright = { kind: 'text', text: 'l', x: 40, y: 40, size: 30, width: 9, bold: false, italic: false } as const;
    const pictureOf = (italic: boolean) =>
      pngOf(
        {
          ...drawing,
          parts: [
            {
              name: 'word',
              line: null,
              title: '',
              shapes: [{ ...upright, italic, anchor: 'start' as const, paint: 'ink' as const }],
            },
          ],
        },
        'print',
        context.asset,
      );
    expect(Buffer.compare(await pictureOf(true), await pictureOf(false))).not.toBe(0);
  });

  test.each(hostileTexts)('keeps a hostile title as text: %j', (text) => {
    const bare = Buffer.concat([Buffer.alloc(8 + 25), Buffer.from('rest')]);
    const titled = Buffer.from(withTitle(bare, text));
    const length = titled.readUInt32BE(33);
    expect(titled.length).toBe(bare.length + 12 + length);
    expect(titled.subarray(-4).toString()).toBe('rest');
    expect(titled.toString('latin1', 37, 41)).toBe('iTXt');
    expect(titled.subarray(41 + 10, 41 + length).includes(0)).toBe(false);
  });
});

describe('the checksum of a PNG', () => {
  // The check value of CRC-32 as its catalogues give it, and the last four bytes of every PNG.
  test.each([
    ['123456789', 0xcbf43926],
    ['IEND', 0xae426082],
  ])('of %s', (text, expected) => {
    expect(checksum(Buffer.from(text, 'latin1'))).toBe(expected);
  });

  test('stands behind each chunk', async () => {
    const { files } = await drawFiles.png(recordOf(small), context, noFileWishes);
    const chunks = chunksOf(files[0]?.content);
    expect(chunks.map(({ type }) => type)).toEqual(expect.arrayContaining(['IHDR', 'iTXt', 'IDAT', 'IEND']));
    for (const { type, data, check } of chunks)
      expect(check).toBe(checksum(Buffer.concat([Buffer.from(type, 'latin1'), data])));
  });
});

describe('leaned words', () => {
  test('lean by 12 degrees about the beginning of their line, and the others stand', () => {
    const svg = drawingFile(drawWell(recordOf(`${small}  5 - 6 sand ; <text x="1" y="2" font-style="italic"\n`)));
    const slanted = [...svg.matchAll(/<text [^>]*y="([^"]*)"[^>]*font-style="italic"/g)].map(([, y]) => Number(y));
    expect(slanted.length).toBeGreaterThan(0);
    // tan 12° = 0.2126, from a table of tangents, from memory.
    const moves = [...leaned(svg).matchAll(/transform="matrix\(1 0 -0\.2126 1 ([\d.]+) 0\)"/g)].map(([, by]) =>
      Number(by),
    );
    expect(moves).toHaveLength(slanted.length);
    for (const [n, y] of slanted.entries()) expect(moves[n]).toBeCloseTo(0.2126 * y, 1);
    expect(XMLValidator.validate(leaned(svg))).toBe(true);
    expect(leaned(svg).replace(/ transform="matrix[^"]*"/g, '')).toBe(svg);
  });
});

describe('an SVG', () => {
  test('is dark where that is asked for, and otherwise for paper', async () => {
    const svgOf = async (theme: 'print' | 'dark') =>
      (await drawFiles.svg(recordOf(busyLog), context, { ...noFileWishes, theme })).files[0]?.content as string;
    const [print, dark] = [await svgOf('print'), await svgOf('dark')];
    expect(XMLValidator.validate(dark)).toBe(true);
    expect(print).toContain('fill="#ffffff"');
    expect(dark).toContain('fill="#1f2123"');
    expect(dark).not.toContain('var(--');
    expect(dark).not.toContain('tabindex');
    expect(dark.replace(/#[0-9a-f]{6}/g, '')).toBe(print.replace(/#[0-9a-f]{6}/g, ''));
  });

  test('of several sheets is several files, numbered', async () => {
    const { files } = await drawFiles.svg(recordOf(deepLog(300)), context, {
      drawing: { layout: 'pages' },
      theme: 'print',
    });
    expect(files.length).toBeGreaterThan(1);
    expect(files.map(({ name }) => name)).toEqual(files.map((_, n) => `well-${n + 1}.svg`));
  });
});

test('each format makes one file that is named after the log', async () => {
  const names = await Promise.all(
    fileFormats.map(async (format) => (await format.make(recordOf(small), context)).files.map(({ name }) => name)),
  );
  expect(names).toEqual([['well.svg'], ['well.png'], ['well.pdf'], ['well.html']]);
});
