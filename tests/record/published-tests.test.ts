import { readdirSync, readFileSync } from 'node:fs';
import cephes from 'cephes';
import { describe, expect, test } from 'vitest';
import { analyseText } from '../../server/cli/engine.ts';
import { formatText } from '../../server/features/format.ts';
import { figureIn, recordOf } from './record-of.ts';

const folder = new URL('../../samples/tests/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const names = readdirSync(folder).filter((name) => name.endsWith('.well'));
const day = 86_400;

const figures = (name: string) => {
  const record = recordOf(read(name));
  return (id: string) => figureIn(record, id).value ?? Number.NaN;
};

describe('the logs of tests', () => {
  test.each(names)('%s is formatted, and the checks find nothing wrong with it', (name) => {
    const text = read(name);
    expect(formatText(text)).toBe(text);
    const { findings } = analyseText(text, { packs: [], today: '2026-12-31' });
    const loud = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
    expect(loud.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
  });

  test.each(names)('%s says where its numbers are from', (name) => {
    expect(read(name)).toMatch(
      /^# [\s\S]*(Analysis and Evaluation of Pumping Test Data|Groundwater Hydrology|Theis's formula)/,
    );
  });
});

// Oude Korendijk, Kruseman and de Ridder: T 385 m²/d, S 1.7e-4 over 1 to 10 min (results from memory); over 10 min and
// later T 581 m²/d (derived).
describe('a test at one rate', () => {
  const value = figures('constant-rate.well');
  const line = 'test.1.observed.1.cooper-jacob';

  test('gives the published T and S over the published window', () => {
    expect(value(`${line}.1-10-min.transmissivity`) * day).toBeCloseTo(385, 0);
    expect(value(`${line}.1-10-min.storativity`)).toBeCloseTo(1.67e-4, 6);
  });

  test('warns that u is large in that window, and does not refuse it', () => {
    const figure = figureIn(recordOf(read('constant-rate.well')), `${line}.1-10-min.transmissivity`);
    expect(figure.caution).toContain('u runs from 0.14 down to 0.014');
  });

  test('gives a larger T the later the window', () => {
    const later = value(`${line}.100-1000-min.transmissivity`);
    expect(later).toBeGreaterThan(value(`${line}.10-100-min.transmissivity`));
    expect(value(`${line}.10-100-min.transmissivity`)).toBeGreaterThan(value(`${line}.1-10-min.transmissivity`));
  });
});

// Todd, Groundwater Hydrology, worked example of recovery (from memory): T 1,140 m²/d by a line drawn by eye.
test('a recovery gives the published T within 5 %', () => {
  const found = figures('recovery.well')('test.1.observed.1.recovery.transmissivity') * day;
  expect(Math.abs(found / 1140 - 1)).toBeLessThan(0.05);
});

// Synthetic, as the file says: T 250 m²/d, S 0.0002, r 0.125 m, C 1,000 s²/m⁵, levels rounded to 1 mm.
describe('a test in steps', () => {
  const value = figures('steps.well');
  const transmissivity = 250 / day;
  const u = (0.125 ** 2 * 2e-4) / (4 * transmissivity * 3600);

  test('gives back its losses', () => {
    const linear = cephes.expn(1, u) / (4 * Math.PI * transmissivity);
    expect(value('test.1.step.linear-loss') / linear).toBeCloseTo(1, 2);
    expect(Math.abs(value('test.1.step.square-loss') / 1000 - 1)).toBeLessThan(0.02);
  });

  test('gives back its transmissivity from the first step', () => {
    expect(Math.abs((value('test.1.cooper-jacob.transmissivity') * day) / 250 - 1)).toBeLessThan(0.01);
    expect(Math.abs((value('test.1.theis.transmissivity') * day) / 250 - 1)).toBeLessThan(0.01);
  });
});
