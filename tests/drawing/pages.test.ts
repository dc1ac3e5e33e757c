import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { type Drawing, type DrawingOptions, drawing, drawingPages, drawSheets } from '../../server/drawing/index.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from '../record/record-of.ts';
import { arbitraryOf } from './arbitrary.ts';
import { outsidePage, overlappingWords, wordsOf } from './boxes.ts';
import { busyLog, deepLog, handLogs, sampleLogs } from './logs.ts';

interface Strip {
  readonly line: number;
  readonly top: number;
  readonly height: number;
}

const layersOf = (sheet: Drawing): Strip[] =>
  sheet.parts.flatMap(({ name, line, shapes }) => {
    const [rect] = shapes;
    return name === 'layer' && line !== null && rect?.kind === 'rect'
      ? [{ line, top: rect.y, height: rect.height }]
      : [];
  });

const layouts: readonly (readonly [string, Partial<DrawingOptions>])[] = [
  ['pages at a scale that suits', { layout: 'pages' }],
  ['letter pages at 1:200', { layout: 'pages', paper: 'letter', scale: 200 }],
  ['one page', { layout: 'page' }],
];

describe.each([...handLogs, ...sampleLogs.filter(([name]) => !name.includes('/'))])('%s', (_, text) => {
  const record = recordOf(text);

  test.each(layouts)('%s: no words over others, everything on the paper', (_name, options) => {
    const sheets = drawSheets(record, options);
    const [width, height] = options.paper === 'letter' ? [215.9, 279.4] : [210, 297];
    for (const sheet of sheets) {
      expect(overlappingWords(sheet)).toEqual([]);
      expect(outsidePage(sheet)).toEqual([]);
      expect(sheet.widthMm).toBeCloseTo(width, 6);
      expect(sheet.heightMm).toBeCloseTo(height, 6);
    }
  });
});

describe('pages at a scale', () => {
  const record = recordOf(deepLog(300));
  const sheets = drawSheets(record, { layout: 'pages', scale: 500 });

  test('depths are to that scale within 0.1 mm, layer by layer, over all pages', () => {
    const heights = new Map<number, number>();
    for (const { line, height } of sheets.flatMap(layersOf)) heights.set(line, (heights.get(line) ?? 0) + height);
    expect(heights.size).toBe(300);
    for (const { line, interval } of record.log.strata) {
      const thickness = (interval.bottom?.value ?? Number.NaN) - (interval.top?.value ?? Number.NaN);
      expect(Math.abs((heights.get(line) ?? Number.NaN) - (thickness * 1000) / 500)).toBeLessThan(0.1);
    }
  });

  test('on each page the boxes of layers meet', () => {
    for (const sheet of sheets) {
      const strips = layersOf(sheet).sort((a, b) => a.top - b.top);
      expect(strips.length).toBeGreaterThan(3);
      for (const [n, strip] of strips.slice(1).entries()) {
        const above = strips[n] as Strip;
        expect(Math.abs(above.top + above.height - strip.top)).toBeLessThan(0.01);
      }
    }
  });

  test('each says which page of how many it is, has an axis, and the head of the well', () => {
    expect(sheets.length).toBeGreaterThan(5);
    for (const [n, sheet] of sheets.entries()) {
      expect(sheet.parts.find(({ name }) => name === 'page')?.title).toBe(`Page ${n + 1} of ${sheets.length}`);
      expect(sheet.parts.some(({ name }) => name === 'axis-depth')).toBe(true);
      expect(sheet.parts.find(({ name }) => name === 'title')?.title).toContain('L-800');
    }
  });

  test('a layer that goes on is named again at the head of the next page', () => {
    const second = recordOf('hole\n  0 - 300 152\nstrata\n  0 - 300 granite, pink\n');
    const pages = drawSheets(second, { layout: 'pages', scale: 500 });
    expect(pages.length).toBeGreaterThan(1);
    const words = wordsOf(pages[1] as Drawing).map(({ text }) => text);
    expect(words.join(' ')).toContain('Granite, pink (continued)');
  });

  test('every description stands on one page or another', () => {
    const texts = sheets.flatMap((sheet) =>
      wordsOf(sheet)
        .filter(({ part }) => part.name === 'description' && !part.title.endsWith('continued'))
        .map(({ text }) => text),
    );
    expect(texts.filter((text) => text === 'Shale')).toHaveLength(60);
  });

  test('the well is as wide on every page, whichever of its parts that shows', () => {
    const pages = drawSheets(recordOf(busyLog), { layout: 'pages', scale: 120 });
    expect(pages.length).toBeGreaterThan(1);
    const heads = pages.map((page) => wordsOf(page).find(({ text }) => text.startsWith('widths drawn'))?.text);
    expect(new Set(heads).size).toBe(1);
  });
});

test('one page holds 300 layers by drawing everything smaller', () => {
  const [sheet] = drawSheets(recordOf(deepLog(300)), { layout: 'page' });
  expect(layersOf(sheet as Drawing)).toHaveLength(300);
  expect((sheet as Drawing).heightMm).toBeCloseTo(297, 6);
});

test('a continuous sheet keeps to a scale asked for where its words find room', () => {
  const record = recordOf('hole\n  0 - 61 152\nstrata\n  0 - 61 limestone\n');
  const [sheet] = drawSheets(record, { scale: 200 });
  expect(layersOf(sheet as Drawing)[0]?.height).toBeCloseTo(305, 6);
});

test('the same record and options give the same bytes', () => {
  const make = () => drawingPages(recordOf(busyLog), { scale: 120 });
  expect(make()).toEqual(make());
  expect(drawing(recordOf(busyLog))).toBe(drawing(recordOf(busyLog)));
});

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

test('random records on pages: nothing overlaps, all is on the page, well-formed', () => {
  fc.assert(
    fc.property(records, fc.constantFrom('page', 'pages'), fc.constantFrom(null, 2000), (record, layout, scale) => {
      const options: Partial<DrawingOptions> = { layout: layout as 'page' | 'pages', scale };
      for (const sheet of drawSheets(record, options).slice(0, 12)) {
        expect(overlappingWords(sheet)).toEqual([]);
        expect(outsidePage(sheet)).toEqual([]);
      }
      const [first = ''] = drawingPages(record, options);
      expect(XMLValidator.validate(first)).toBe(true);
      expect(first.replace(/>[^<]*</g, '><').replace(/aria-label="[^"]*"/, '')).not.toMatch(/NaN|Infinity/);
    }),
    { numRuns: 30 },
  );
});
