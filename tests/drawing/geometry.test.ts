import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columnIds, type Drawing, drawSheets, drawWell } from '../../server/drawing/index.ts';
import type { RectShape } from '../../server/drawing/shapes.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from '../record/record-of.ts';
import { arbitraryOf } from './arbitrary.ts';
import { outsidePage, overlappingWords, wordsOf } from './boxes.ts';
import { busyLog, deepLog, handLogs, sampleLogs, shallowLog } from './logs.ts';

const layerRects = (drawing: Drawing): { line: number; rect: RectShape }[] =>
  drawing.parts.flatMap(({ name, line, shapes }) => {
    const rect = shapes.find((shape) => shape.kind === 'rect');
    return name === 'layer' && line !== null && rect?.kind === 'rect' ? [{ line, rect }] : [];
  });

describe.each([...handLogs, ...sampleLogs])('the drawing of %s', (_, text) => {
  const record = recordOf(text);
  const drawing = drawWell(record);

  test('has no words over other words', () => {
    expect(overlappingWords(drawing)).toEqual([]);
  });

  test('keeps everything on the page', () => {
    expect(outsidePage(drawing)).toEqual([]);
  });

  test('is the same each time', () => {
    expect(drawWell(recordOf(text))).toEqual(drawing);
  });
});

describe('depths to scale', () => {
  test.each([
    ['metres', deepLog(300), 1],
    ['few metres', shallowLog, 1],
    ['feet', busyLog, 0.3048],
  ])('layers lie within 0.1 mm of a line through the marks of the axis: %s', (_, text, metres) => {
    const record = recordOf(text);
    const drawing = drawWell(record);
    const axis = drawing.parts.find(({ name }) => name === 'axis-depth');
    const marks = (axis?.shapes ?? []).flatMap((shape, n, shapes) => {
      const after = shapes[n + 1];
      const isMajor = shape.kind === 'path' && after?.kind === 'text';
      return isMajor ? [{ y: shape.points[0]?.y ?? Number.NaN, depth: Number(after.text) * metres }] : [];
    });
    const [first, last] = [marks[0], marks.at(-1)];
    if (!first || !last || first === last) throw new Error('the axis has too few marks');
    const lineAt = (depth: number) =>
      first.y + ((depth - first.depth) * (last.y - first.y)) / (last.depth - first.depth);
    for (const mark of marks) expect(Math.abs(mark.y - lineAt(mark.depth))).toBeLessThan(0.1);
    const rects = layerRects(drawing);
    expect(rects).toHaveLength(record.log.strata.length);
    for (const { line, rect } of rects) {
      const interval = record.log.strata.find((stratum) => stratum.line === line)?.interval;
      expect(Math.abs(rect.y - lineAt(interval?.top?.value ?? Number.NaN))).toBeLessThan(0.1);
      expect(Math.abs(rect.y + rect.height - lineAt(interval?.bottom?.value ?? Number.NaN))).toBeLessThan(0.1);
    }
  });

  test('the scale is a round one, and as printed: 61 m at 1:400 are 152.5 mm', () => {
    const drawing = drawWell(recordOf('hole\n  0 - 61 152\nstrata\n  0 - 61 limestone\n'));
    expect(drawing.scale.denominator).toBe(400);
    expect(layerRects(drawing)[0]?.rect.height).toBeCloseTo(152.5, 6);
  });

  test('in feet the scale is of inches to the foot: 1 in to 30 ft is 1:360', () => {
    expect(drawWell(recordOf(busyLog)).scale.denominator % 12).toBe(0);
  });

  test('elevations fall as depths grow: ground at 287.4 m, 100 m of hole', () => {
    const drawing = drawWell(recordOf('ground 287.4 m\nhole\n  0 - 100 152\n'));
    const axis = drawing.parts.find(({ name }) => name === 'axis-elevation');
    const words = (axis?.shapes ?? []).filter((shape) => shape.kind === 'text').sort((a, b) => a.y - b.y);
    const { scale } = drawing;
    for (const [n, shape] of words.entries()) {
      const mark = axis?.shapes[axis.shapes.indexOf(shape) - 1];
      const y = mark?.kind === 'path' ? (mark.points[0]?.y ?? Number.NaN) : Number.NaN;
      expect(y).toBeCloseTo(scale.top + (287.4 - Number(shape.text)) * scale.mmPerMetre, 1);
      if (n > 0) expect(Number(shape.text)).toBeLessThan(Number(words[n - 1]?.text));
    }
    expect(words.length).toBeGreaterThan(3);
  });
});

describe('the sheet', () => {
  const record = recordOf(busyLog);

  test('fits a page of A4 (297 mm high, ISO 216) for a well of the usual size', () => {
    expect(drawWell(record).heightMm).toBeLessThan(297 - 2 * 10);
  });

  test.each([80, 120, 180, 260, 400])('is laid out without a clash at a width of %i mm', (widthMm) => {
    const drawing = drawWell(record, { widthMm });
    expect(drawing.widthMm).toBe(widthMm);
    expect(overlappingWords(drawing)).toEqual([]);
    expect(outsidePage(drawing)).toEqual([]);
  });

  test.each(columnIds)('can be the column %s alone', (column) => {
    const drawing = drawWell(record, { columns: [column], title: false });
    expect(drawing.parts.length).toBeGreaterThan(2);
    expect(outsidePage(drawing)).toEqual([]);
  });

  test('leaves the title out on demand', () => {
    const names = drawWell(record, { title: false }).parts.map(({ name }) => name);
    expect(names).not.toContain('title');
    expect(drawWell(record).parts.map(({ name }) => name)).toContain('title');
  });

  test('has every word of 300 descriptions', () => {
    const text = wordsOf(drawWell(recordOf(deepLog(300))))
      .filter(({ part }) => part.name === 'description')
      .map((word) => word.text)
      .join(' ');
    expect(text.match(/Shale/g)).toHaveLength(60);
    expect(text.match(/chert/g)).toHaveLength(60);
  });
});

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

test('random records: nothing overlaps, all is on the page, no place is other than a number', () => {
  fc.assert(
    fc.property(records, (record) => {
      const drawing = drawWell(record);
      expect(overlappingWords(drawing)).toEqual([]);
      expect(outsidePage(drawing)).toEqual([]);
    }),
    { numRuns: 150 },
  );
});

const titled = `well TB-1
place utm 17T 718420 4939115 NAD83, accuracy 2 m
site The lower field of Fenmarrow
location Lot 3, Concession 4
owner A name of some length
contractor Quillback Drilling
licence Q-0417
tag F 20597
permit 2026-114
hole
  0 - 20 152
`;

describe('the title block', () => {
  const wordsOfTitle = (text: string, options: Parameters<typeof drawWell>[1]) =>
    drawSheets(recordOf(text), options).flatMap((sheet) =>
      wordsOf(sheet).flatMap((each) => (each.part.name === 'title' ? [each.text] : [])),
    );

  test.each(['continuous', 'page', 'pages'] as const)('has place, tag, licence and permit (%s)', (layout) => {
    const words = wordsOfTitle(titled, { layout });
    expect(words).toContain('UTM 17N 718420 E 4939115 N, NAD83');
    expect(words).toContain('Tag F 20597, licence Q-0417, permit 2026-114');
    expect(drawSheets(recordOf(titled), { layout }).flatMap(overlappingWords)).toEqual([]);
  });

  test('has those that the log gives, degrees too, and says where they are doubtful', () => {
    const words = wordsOfTitle('place 44.4129 -78.0553? WGS84\npermit 7\nhole\n  0 - 20 152\n', {});
    expect(words).toEqual(expect.arrayContaining(['44.4129°, -78.0553° (doubtful), WGS84', 'Permit 7']));
  });

  test('is as high as its rows', () => {
    const drawing = drawWell(recordOf(titled));
    const title = drawing.parts.find(({ name }) => name === 'title');
    const rule = title?.shapes.find(({ kind }) => kind === 'path');
    const foot = rule?.kind === 'path' ? (rule.points[0]?.y ?? 0) : 0;
    for (const { part, box } of wordsOf(drawing))
      if (part.name === 'title') expect(box.y + box.height).toBeLessThan(foot);
  });
});
