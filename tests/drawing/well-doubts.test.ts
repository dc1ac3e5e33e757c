import { describe, expect, test } from 'vitest';
import { type Drawing, drawSheets, drawWell } from '../../server/drawing/index.ts';
import { recordOf } from '../record/record-of.ts';
import { boxOf, outsidePage, overlaps } from './boxes.ts';

const log = `well DM-1
units m mm
hole
  0 - ~30 254 rotary
casing ~+0.4 - 20? steel 168.3 x 6.4
  shoe ~20
  grout 0? - ~18 bentonite slurry
  plug 19? cement
  centralizers 5 ~10 15?
  packer 12? rubber
  pitless ~2
water
  ~24 fresh, 20 L/min
  26 - 28? salty
  29 fresh
  gas 23? methane
  level 6.5? 2026-06-01
test pump 60 L/min, 2026-06-10 08:00
  0   6.5
  60  ~11
`;

const signsOf = (drawing: Drawing): Map<string, string> =>
  new Map(
    drawing.parts
      .filter(({ name }) => name === 'doubt')
      .map(({ title, shapes }) => [
        title,
        shapes.flatMap((each) => (each.kind === 'text' ? [each.text] : [])).join(''),
      ]),
  );

const expected = new Map([
  ['Top of casing 1 approximate', '~'],
  ['Foot of casing 1 not certain', '?'],
  ['Shoe of casing 1 approximate', '~'],
  ['Centralizer of casing 1 approximate', '~'],
  ['Centralizer of casing 1 not certain', '?'],
  ['Packer of casing 1 not certain', '?'],
  ['Pitless adapter of casing 1 approximate', '~'],
  ['Top of grout of casing 1 not certain', '?'],
  ['Foot of grout of casing 1 approximate', '~'],
  ['Plug of casing 1 not certain', '?'],
  ['Foot of hole approximate', '~'],
  ['Water found approximate', '~'],
  ['Foot of water found not certain', '?'],
  ['Gas not certain', '?'],
  ['Static level not certain', '?'],
  ['Pumping level approximate', '~'],
]);

describe('places on the well that are not certain', () => {
  test('each is marked, and nothing that is sure', () => {
    expect(signsOf(drawWell(recordOf(log)))).toEqual(expected);
    const sure = log.replaceAll('~', '').replaceAll('?', '');
    expect(signsOf(drawWell(recordOf(sure))).size).toBe(0);
  });

  test.each(['page', 'pages'] as const)('on paper as well (layout %s)', (layout) => {
    const sheets = drawSheets(recordOf(log), { layout, scale: layout === 'pages' ? 100 : null });
    expect(sheets.length).toBe(layout === 'pages' ? 2 : 1);
    expect(new Map(sheets.flatMap((sheet) => [...signsOf(sheet)]))).toEqual(expected);
    expect(sheets.flatMap(outsidePage)).toEqual([]);
  });

  test('stand at their depths, each clear of the others', () => {
    const drawing = drawWell(recordOf(log));
    const marks = drawing.parts.filter(({ name }) => name === 'doubt');
    const boxes = marks
      .map(({ shapes }) => shapes.find(({ kind }) => kind === 'ellipse'))
      .map((each) => each && boxOf(each));
    for (const [n, one] of boxes.entries())
      for (const other of boxes.slice(n + 1)) expect(one && other && overlaps(one, other)).toBe(false);
    const { top, mmPerMetre, window } = drawing.scale;
    const level = boxes[marks.findIndex(({ title }) => title === 'Static level not certain')];
    expect((level?.y ?? 0) + (level?.height ?? 0) / 2).toBeCloseTo(top + (6.5 - window.top) * mmPerMetre, 6);
  });

  test('both signs are in the legend', () => {
    const legend = drawWell(recordOf(log)).parts.find(({ name }) => name === 'legend');
    const words = legend?.shapes.flatMap((each) => (each.kind === 'text' ? [each.text] : []));
    expect(words).toEqual(expect.arrayContaining(['Approximate place (~)', 'Not recorded, or doubtful']));
  });

  test('more marks at one depth than fit beside each other stay within the page', () => {
    const crowd = Array.from({ length: 40 }, () => '  ~24 fresh').join('\n');
    expect(outsidePage(drawWell(recordOf(`hole\n  0 - 30 254\nwater\n${crowd}\n`)))).toEqual([]);
  });
});
