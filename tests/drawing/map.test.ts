import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { type Drawing, drawingFile, wellMap, wellSection } from '../../server/drawing/index.ts';
import { matchLayers } from '../../server/drawing/section-joins.ts';
import { sheetOf } from '../../server/drawing/sheet.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from '../record/record-of.ts';
import { arbitraryOf, hostileTexts } from './arbitrary.ts';
import { outsidePage, overlappingWords, overlaps, wordsOf } from './boxes.ts';
import { sampleLogs } from './logs.ts';
import { readXml } from './read-xml.ts';

const samples = sampleLogs.filter(([name]) => !name.includes('/'));
const sampleWells = samples.map(([file, text]) => ({ file, record: recordOf(text) }));

const wellAt = (name: string, easting: number, northing: number, more = '') => ({
  file: `${name}.well`,
  record: recordOf(`well ${name}\nplace utm 17N ${easting} ${northing} NAD83\n${more}`),
});

interface Dot {
  readonly x: number;
  readonly y: number;
  readonly title: string;
}

const dotsOf = (map: Drawing): Dot[] =>
  map.parts.flatMap(({ name, shapes, title }) => {
    const dot = shapes.at(-1);
    return name === 'map-well' && dot?.kind === 'ellipse' ? [{ x: dot.x, y: dot.y, title }] : [];
  });

const dense = (count: number) =>
  Array.from({ length: count }, (_, n) =>
    wellAt(`DW-${n}`, 600_000 + (n % 10) * 20, 4_900_000 + Math.floor(n / 10) * 20),
  );

describe('the map', () => {
  test('of the samples: names over no other names, all on the sheet, every well there', () => {
    const map = wellMap(sampleWells);
    expect(overlappingWords(map)).toEqual([]);
    expect(outsidePage(map)).toEqual([]);
    expect(dotsOf(map)).toHaveLength(sampleWells.length);
  });

  test('distances are to the scale that it says: 1,000 m east and 500 m north', () => {
    const map = wellMap([wellAt('A', 500_000, 4_900_000), wellAt('B', 501_000, 4_900_500)]);
    const [a, b] = dotsOf(map);
    const scale = Number(/1:(\d+)/.exec(map.parts.map(({ title }) => title).join(' '))?.[1]);
    // On the central meridian the grid is 0.9996 of the ground, and the plane of the map is a sphere's: within 1 %.
    expect((((b?.x ?? 0) - (a?.x ?? 0)) * scale) / 1000 / 1000).toBeCloseTo(1, 1.7);
    expect((((a?.y ?? 0) - (b?.y ?? 0)) * scale) / 1000 / 500).toBeCloseTo(1, 1.7);
  });

  test('a hundred wells close together: no name over another or over a well', () => {
    const map = wellMap(dense(100));
    const words = wordsOf(map).filter(({ part }) => part.name === 'map-well');
    expect(overlappingWords(map)).toEqual([]);
    expect(words.length).toBeGreaterThan(50);
    for (const { box } of words)
      for (const { x, y } of dotsOf(map))
        expect(overlaps(box, { x: x - 1, y: y - 1, width: 2, height: 2 })).toBe(false);
  });

  test('wells without a place are named below it, and a map of none says so', () => {
    const lost = { file: 'lost.well', record: recordOf('hole\n  0 - 5 100\n') };
    const words = (map: Drawing) =>
      wordsOf(map)
        .map(({ text }) => text)
        .join(' ');
    expect(words(wellMap([wellAt('A', 500_000, 4_900_000), lost]))).toContain('Without a place: lost.well.');
    expect(words(wellMap([lost]))).toContain('None of these wells has a place.');
  });
});

const stack = (name: string, easting: number, ground: number, strata: string) =>
  wellAt(name, easting, 4_900_000, `ground ${ground} m\nhole\n  0 - 30 152\nstrata\n${strata}`);

const pair = [
  stack('A', 500_000, 100, '  0 - 5 clay\n  - 12 sand\n  - 30 limestone\n'),
  stack('B', 500_800, 90, '  0 - 3 clay\n  - 6 gravel\n  - 20 sand\n  - 30 limestone\n'),
];

describe('the section', () => {
  test.each([false, true])('of the samples: all on the sheet (joined: %s)', (join) => {
    const drawn = wellSection(sampleWells, join);
    expect(overlappingWords(drawn)).toEqual([]);
    expect(outsidePage(drawn)).toEqual([]);
    expect(XMLValidator.validate(drawingFile(drawn))).toBe(true);
  });

  test('wells hang by their grounds: 10 m of elevation are 10 m at its scale, within 0.1 mm', () => {
    const drawn = wellSection(pair);
    const layers = drawn.parts.filter(({ name }) => name === 'layer');
    const tops = layers.flatMap(({ title, shapes: [shape] }) =>
      title.startsWith('0 –') && shape?.kind === 'rect' ? [shape.y] : [],
    );
    const scale = Number(/Elevations 1:(\d+)/.exec(drawn.parts.map(({ title }) => title).join(' '))?.[1]);
    expect(Math.abs((tops[1] ?? 0) - (tops[0] ?? 0) - 10_000 / scale)).toBeLessThan(0.1);
  });

  test('nothing is joined unless asked', () => {
    expect(wellSection(pair).parts.filter(({ name }) => name === 'join')).toEqual([]);
    expect(wellSection(pair, true).parts.filter(({ name }) => name === 'join').length).toBe(3);
  });

  test('layers of one material in the same order are joined; gravel that only one well has is not', () => {
    const [left, right] = pair.map(({ record }) => sheetOf(record).layers.layers);
    const joined = matchLayers(left ?? [], right ?? []).map((match) => [match.left.top, match.right.top]);
    expect(joined).toEqual([
      [0, 0],
      [5, 6],
      [12, 20],
    ]);
  });

  test('a well without a ground elevation is named, not hung', () => {
    const loose = wellAt('C', 501_000, 4_900_000, 'hole\n  0 - 9 100\n');
    const words = wordsOf(wellSection([...pair, loose])).map(({ text }) => text);
    expect(words.join(' ')).toContain('Without a ground elevation, and so not hung here: C.');
  });
});

test.each(hostileTexts)('a name stays text: %j', (name) => {
  const wells = pair.map(({ record }) => ({
    file: name,
    record: {
      ...record,
      log: { ...record.log, header: { well: { text: name, span: { line: 0, start: 0, end: 0 } } } },
    },
  }));
  for (const svg of [drawingFile(wellMap(wells)), drawingFile(wellSection(wells, true))]) {
    expect(XMLValidator.validate(svg)).toBe(true);
    expect([...readXml(svg).elements].filter((each) => ['script', 'img', 'a', 'image'].includes(each))).toEqual([]);
  }
});

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

test('random records: well-formed, on the sheet, no NaN', () => {
  fc.assert(
    fc.property(fc.array(records, { minLength: 1, maxLength: 3 }), (several) => {
      const wells = several.map((record, n) => ({ record, file: `${n}.well` }));
      for (const drawn of [wellMap(wells), wellSection(wells, true)]) {
        const svg = drawingFile(drawn);
        expect(XMLValidator.validate(svg)).toBe(true);
        expect(svg.replace(/>[^<]*</g, '><').replace(/aria-label="[^"]*"/, '')).not.toMatch(/NaN|Infinity/);
        expect(outsidePage(drawn)).toEqual([]);
        expect(overlappingWords(drawn)).toEqual([]);
      }
    }),
    { numRuns: 40 },
  );
});
