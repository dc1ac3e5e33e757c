import fc from 'fast-check';
import { XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { type Drawing, drawingFile, groutPlot, plotSheets, testPlots } from '../../server/drawing/index.ts';
import { linearAxis, logAxis } from '../../server/drawing/plots/axes.ts';
import { Record as RecordSchema, type Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from '../record/record-of.ts';
import { arbitraryOf } from './arbitrary.ts';
import { boxOf, outsidePage, overlappingWords } from './boxes.ts';
import { sampleLogs } from './logs.ts';
import { readXml } from './read-xml.ts';

const steadyTest = `well PT-1
hole
  0 - 60 152
casing 0 - 20 steel 168.3 x 6.4
test pump 100 L/min, intake 50, 2026-05-07 08:00
  0    10
  1    12
  10   13
  100  14
  1000 15
  recovery 1000
  1    13
  10   12
  100  11
`;

const plotsOf = (record: WellRecord): Drawing[] => [
  ...testPlots(record),
  ...[groutPlot(record)].filter((each) => each !== null),
];

const partsNamed = (drawing: Drawing | undefined, name: string) =>
  (drawing?.parts ?? []).filter((part) => part.name === name);

describe.each(sampleLogs.filter(([name]) => !name.includes('/')))('the plots of %s', (_, text) => {
  const plots = plotsOf(recordOf(text));

  test('keep to their sheets of paper, with the name of the well, smaller where they must be', () => {
    const sheets = plotSheets(recordOf(text), { paper: 'letter' });
    expect(sheets.map(({ title }) => title)).toEqual(plots.map(({ title }) => title));
    for (const sheet of sheets) {
      // 8.5 by 11 inches (ANSI/ASME Y14.1).
      expect([sheet.widthMm, sheet.heightMm]).toEqual([215.9, 279.4]);
      expect(overlappingWords(sheet)).toEqual([]);
      expect(outsidePage(sheet)).toEqual([]);
    }
  });

  test('have no words over others, and keep to their sheet', () => {
    for (const plot of plots) {
      expect(overlappingWords(plot)).toEqual([]);
      expect(outsidePage(plot)).toEqual([]);
    }
  });
});

describe('a test plot', () => {
  const [linear, log, recovery] = testPlots(recordOf(steadyTest));

  test('there is one against time, one against time in tenfolds, one of the recovery', () => {
    expect([linear, log, recovery].map((plot) => plot?.title)).toEqual([
      'Test 1 of PT-1: drawdown and recovery',
      'Test 1 of PT-1: drawdown, time in tenfolds',
      'Test 1 of PT-1: recovery',
    ]);
  });

  test('each reading can be followed to its line', () => {
    expect(partsNamed(linear, 'reading').map(({ line }) => line)).toEqual([5, 6, 7, 8, 9, 11, 12, 13]);
  });

  test('readings a tenfold of time and a metre of drawdown apart stand evenly on the logarithmic axis', () => {
    const places = partsNamed(log, 'reading').map(({ shapes: [shape] }) => (shape ? boxOf(shape) : { x: 0, y: 0 }));
    const steps = places.slice(1).map((place, n) => [place.x - (places[n]?.x ?? 0), place.y - (places[n]?.y ?? 0)]);
    for (const [right = 0, down = 0] of steps) {
      expect(right).toBeCloseTo(steps[0]?.[0] ?? Number.NaN, 6);
      expect(down).toBeCloseTo(steps[0]?.[1] ?? Number.NaN, 6);
      expect(down).toBeGreaterThan(0);
    }
  });

  test('the fitted line runs through readings that lie on a line, over their window, and says its figures', () => {
    const [fit] = partsNamed(log, 'fit-cooper-jacob');
    const path = fit?.shapes[0];
    const points = path?.kind === 'path' ? path.points : [];
    const centres = partsNamed(log, 'reading').map(({ shapes: [shape] }) =>
      shape?.kind === 'ellipse' ? [shape.x, shape.y] : [0, 0],
    );
    const [first, last] = [points[0], points.at(-1)];
    const start = centres.find(([x = 0]) => Math.abs(x - (first?.x ?? Number.NaN)) < 0.001);
    expect(first?.y).toBeCloseTo(start?.[1] ?? Number.NaN, 3);
    expect(last?.x).toBeCloseTo(centres.at(-1)?.[0] ?? 0, 3);
    expect(last?.y).toBeCloseTo(centres.at(-1)?.[1] ?? 0, 3);
    expect(fit?.title).toMatch(/straight line \(Cooper and Jacob\): .*transmissivity [\d.]+ m²\/d, misfit /);
  });

  test('a log without readings has no plot', () => {
    expect(testPlots(recordOf('hole\n  0 - 10 152\n'))).toEqual([]);
    expect(groutPlot(recordOf('hole\n  0 - 10 152\n'))).toBeNull();
  });
});

describe('the grout plot', () => {
  test('the bars are as long as the volumes: an annulus of 168.3 mm in 254 mm, 10 m, 15 % allowed', () => {
    const plot = groutPlot(
      recordOf('hole\n  0 - 10 254\ncasing 0 - 10 steel 168.3 x 6.4\n  grout 0 - 10 neat cement, 0.6 m3\n'),
    );
    const bars = partsNamed(plot ?? undefined, 'grout-row').flatMap(({ shapes }) =>
      shapes.filter((shape) => shape.kind === 'rect'),
    );
    const required = (Math.PI / 4) * (0.254 ** 2 - 0.1683 ** 2) * 10 * 1.15;
    expect(bars).toHaveLength(2);
    expect((bars[0]?.width ?? 0) / (bars[1]?.width ?? 1)).toBeCloseTo(required / 0.6, 6);
  });
});

describe('axes', () => {
  test('a linear axis ends at round values and holds its domain', () => {
    const axis = linearAxis('t', [0, 61], 0, 100);
    expect(axis.ticks.at(-1)?.text).toBe('70');
    expect(axis.placeOf(0)).toBe(0);
    expect(axis.placeOf(70)).toBe(100);
  });

  test('a logarithmic axis names the tenfolds of many, and 2 and 5 too of few', () => {
    const named = (to: number) =>
      logAxis('t', [1, to], 0, 100).ticks.flatMap(({ text }) => (text === '' ? [] : [text]));
    expect(named(10_000)).toEqual(['1', '10', '100', '1000', '10000']);
    expect(named(10)).toEqual(['1', '2', '5', '10']);
  });
});

const records = arbitraryOf(RecordSchema) as fc.Arbitrary<WellRecord>;

test('random records: plots are well-formed, their numbers are numbers, their words do not clash', () => {
  fc.assert(
    fc.property(records, (record) => {
      for (const plot of plotsOf(record)) {
        const svg = drawingFile(plot);
        expect(XMLValidator.validate(svg)).toBe(true);
        expect(svg.replace(/>[^<]*</g, '><').replace(/aria-label="[^"]*"/, '')).not.toMatch(/NaN|Infinity/);
        expect([...readXml(svg).attributes].filter((name) => name.startsWith('on') || name === 'style')).toEqual([]);
        expect(overlappingWords(plot)).toEqual([]);
        expect(outsidePage(plot)).toEqual([]);
      }
    }),
    { numRuns: 60 },
  );
});
