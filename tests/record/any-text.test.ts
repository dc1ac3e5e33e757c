import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Record as WellRecord } from '../../server/record/record.ts';
import { recordOf } from './record-of.ts';
import { rockWell } from './rock-well.ts';

const lines = rockWell.split('\n');
const oddLines = [
  'casing ? - ? steel ? x ? driven',
  'liner 80 - 20 pvc 4 sdr 1',
  'grout 9 - 3 cement, ? m3, ? x ? bags, w/c 0, plug inside ?, returned 9 m3',
  'screen 30 - 30 slot 0',
  'pack td - 3 sand',
  ' 0 - 0 0',
  ' 3 - 1 ? min',
  'centralizers every 0',
  'joints 0 x 0 ?',
  'drilling air 0 cfm, pipe 9999999',
  'hole',
  'water',
  ' level ? toc',
  'test pump 0 L/min',
  'observed A, r 0, dd',
  'rate 0 L/min',
  'recovery 0',
  ' 1 1e999',
  'place 99 999',
  'place utm 99 -1 -1',
  'disinfection ? mg/L',
  'abandonment',
  'units ft in gal-imp',
];

const mangled = fc
  .array(fc.oneof(fc.constantFrom(...lines), fc.constantFrom(...oddLines), fc.string()), { maxLength: 60 })
  .map((parts) => parts.join('\n'));

describe('whatever the text', () => {
  test('the record is computed, fits its schema, and its figures are whole or say what they wait for', () => {
    fc.assert(
      fc.property(mangled, (text) => {
        const record = recordOf(text);
        expect(WellRecord.safeParse(record).error).toBeUndefined();
        for (const { id, value, waitsFor, lines: from } of record.figures) {
          expect([id, value === null ? waitsFor.length > 0 : Number.isFinite(value) && waitsFor.length === 0]).toEqual([
            id,
            true,
          ]);
          expect(from.every((line) => line >= 0 && line < text.split(/\r\n|\r|\n/).length)).toBe(true);
        }
        for (const { id, value, text: shown, otherText, inputs } of record.figures) {
          if (value !== null) expect([id, inputs.filter((input) => input.value === null)]).toEqual([id, []]);
          for (const number of [value, ...inputs.map((input) => input.value)]) {
            expect([id, number === null || (Number.isFinite(number) && !Object.is(number, -0))]).toEqual([id, true]);
          }
          const texts = [shown, otherText, ...inputs.map((input) => input.text)];
          expect([
            id,
            texts.filter((each) => /NaN|Infinity|undefined|null|\d[eE][-+]?\d|^-0(\.0*)?( |$)/.test(each)),
          ]).toEqual([id, []]);
        }
        expect(new Set(record.figures.map((figure) => figure.id)).size).toBe(record.figures.length);
      }),
      { numRuns: 600 },
    );
  });

  test('the pieces of an annulus and what is unknown of it fill the string’s part of the fill, without overlap', () => {
    const diameter = fc.integer({ min: 100, max: 600 });
    const depth = fc.integer({ min: 0, max: 60 });
    const log = fc.record({
      hole: fc.array(fc.tuple(depth, depth, diameter), { minLength: 1, maxLength: 6 }),
      strings: fc.array(fc.tuple(depth, diameter), { maxLength: 4 }),
      fill: fc.tuple(depth, depth),
    });
    fc.assert(
      fc.property(log, ({ hole, strings, fill: [from, to] }) => {
        fc.pre(from < to);
        const text = [
          'hole',
          ...hole.map(([top, bottom, wide]) => ` ${Math.min(top, bottom)} - ${Math.max(top, bottom) + 1} ${wide}`),
          ...strings.map(([foot, wide]) => `casing 0 - ${foot + 1} steel ${wide} x 6`),
          'casing 0 - 60 steel 168.3 x 6.4',
          `grout ${from} - ${to} cement`,
        ].join('\n');
        const [fill] = recordOf(text).fills;
        const parts = [...(fill?.pieces ?? []), ...(fill?.unknown ?? [])].sort((a, b) => a.top - b.top);
        let at = from;
        for (const part of parts) {
          expect(part.top).toBeCloseTo(at, 9);
          at = part.bottom;
        }
        expect(at).toBeCloseTo(to, 9);
      }),
      { numRuns: 300 },
    );
  });
});
