import { readFileSync } from 'node:fs';
import cephes from 'cephes';
import { describe, expect, test } from 'vitest';
import { figureIn, recordOf } from './record-of.ts';

const text = readFileSync(new URL('../../samples/quern-point.well', import.meta.url), 'utf8');
const record = recordOf(text);
const [pumped, observed] = record.tests;

describe('what was read in a test', () => {
  test('the pumped well and each observation well, with their lines', () => {
    expect(record.tests.map(({ test: number, well }) => [number, well])).toEqual([
      [1, null],
      [1, 'OW-1'],
    ]);
    const first = observed?.readings[1];
    expect(text.split('\n')[first?.line ?? 0]).toMatch(/38\.77/);
    expect(first?.time).toBe(60);
    // 38.77 ft less 37.9 ft at rest
    expect(first?.drawdown).toBeCloseTo(0.87 * 0.3048, 9);
  });

  test('the recovery knows when the pump stopped', () => {
    expect(pumped?.stop).toBe(1440 * 60);
    expect(pumped?.readings.filter(({ phase }) => phase === 'recovery')).toHaveLength(9);
  });
});

describe('what was fitted', () => {
  test('the straight line falls by its slope in a tenfold of time', () => {
    const curve = pumped?.curves.find(({ method }) => method === 'cooper-jacob');
    const [first, last] = [curve?.points[0], curve?.points.at(-1)];
    if (!first || !last) throw new Error('no line');
    const slope = (last.drawdown - first.drawdown) / Math.log10(last.time / first.time);
    expect(slope).toBeCloseTo(figureIn(record, 'test.1.cooper-jacob.slope').value ?? 0, 9);
  });

  // The well function by the Cephes library: s = Q E1(r² S / 4 T t) / (4 π T), Theis 1935.
  test('the Theis curve is the one of the figures, by another well function', () => {
    const curve = observed?.curves.find(({ method }) => method === 'theis');
    const transmissivity = figureIn(record, 'test.1.observed.1.theis.transmissivity').value ?? 0;
    const storativity = figureIn(record, 'test.1.observed.1.theis.storativity').value ?? 0;
    const [rate, distance] = [(850 * 3.785411784e-3) / 60, 150 * 0.3048];
    expect(curve?.points.length).toBeGreaterThan(10);
    for (const { time, drawdown } of curve?.points ?? []) {
      const u = (distance ** 2 * storativity) / (4 * transmissivity * time);
      const expected = (rate * cephes.expn(1, u)) / (4 * Math.PI * transmissivity);
      expect(Math.abs(drawdown - expected)).toBeLessThan(0.001);
    }
  });

  test('a log of no test has none', () => {
    expect(recordOf('hole\n  0 - 10 152\n').tests).toEqual([]);
  });
});
