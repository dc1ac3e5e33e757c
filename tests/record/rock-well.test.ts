import { describe, expect, test } from 'vitest';
import { Record as WellRecord } from '../../server/record/record.ts';
import { circle, figureIn, recordOf } from './record-of.ts';
import { rockWell } from './rock-well.ts';

// Every expected value is worked out by hand from the log, by the formula beside it.
describe('the record of a plain rock well', () => {
  const record = recordOf(rockWell);
  const value = (id: string) => figureIn(record, id).value;

  test.each([
    ['hole.depth', 61, 'base of the last line'],
    ['casing.1.length', 7.65, '7.2 + 0.45'],
    ['casing.1.joints-length', 7.65, '6.1 + 1.55'],
    ['casing.1.centralizers.widest-gap', 2.7, '6.7 - 4'],
    ['casing.1.grout.1.annulus-volume', (circle(0.254) - circle(0.1683)) * 7.2, 'π/4 (D² - d²) Δz'],
    ['casing.1.grout.1.required-volume', (circle(0.254) - circle(0.1683)) * 7.2 * 1.15, '15 % more'],
    ['casing.1.grout.1.placed-volume', 0.29, 'as written'],
    ['casing.1.grout.1.bags-volume', 360 / 3150 + 0.18, '360 kg of cement at 3.15, 180 L of water'],
    ['casing.1.grout.1.water-cement-ratio', 0.5, 'as written'],
    ['casing.1.grout.1.density', (1 + 0.5) / (1 / 3150 + 0.5 / 1000), 'mass over absolute volume'],
    ['casing.1.grout.1.height-filled', 7.2, 'more was placed than the annulus holds'],
    [
      'casing.1.grout.1.mean-diameter',
      Math.sqrt((4 * 0.29) / Math.PI / 7.2 + 0.1683 ** 2),
      'the annulus formula solved for D',
    ],
    ['casing.1.mass', Math.PI * 7850 * 0.0064 * (0.1683 - 0.0064) * 7.65, 'π ρ t (D - t) L'],
    ['drilling.1.penetration-rate', 6 / (18 * 60), '6 m in 18 min'],
    ['drilling.3.penetration-rate', 6 / (9 * 60), '6 m in 9 min'],
    [
      'drilling.1.uphole-velocity',
      21 / 60 / (circle(0.1683 - 2 * 0.0064) - circle(0.114)),
      'air over the widest annulus',
    ],
    ['water.found-rate', 40 / 60_000, '25 + 15 L/min'],
    ['water.static-level', 5.2, 'as written'],
    ['water.static-level-toc', 5.65, '5.2 + 0.45'],
    ['water.static-level-elevation', 282.2, '287.4 - 5.2'],
  ])('%s', (id, expected) => {
    expect(value(id)).toBeCloseTo(expected, 9);
  });

  test('the annulus of the published figures: 0.2047 m³, with the allowance 0.2354', () => {
    expect(value('casing.1.grout.1.annulus-volume')).toBeCloseTo(0.2047, 4);
    expect(value('casing.1.grout.1.required-volume')).toBeCloseTo(0.2354, 4);
  });

  test('is shown with the digits of the notes, in both systems', () => {
    expect(figureIn(record, 'casing.1.grout.1.annulus-volume')).toMatchObject({
      text: '0.205 m³',
      otherText: '54.1 US gal',
    });
    expect(figureIn(record, 'casing.1.length')).toMatchObject({ text: '7.65 m', otherText: '25.1 ft' });
    expect(figureIn(record, 'water.found-rate').text).toBe('40 L/min');
    expect(figureIn(record, 'casing.1.grout.1.placed-volume').text).toBe('0.29 m³');
  });

  test('says where each number comes from', () => {
    const figure = figureIn(record, 'casing.1.grout.1.annulus-volume');
    const lines = rockWell.split('\n');
    expect(figure.lines.map((line) => lines[line]?.trim().split(/\s+/)[0])).toEqual(['grout', '0', 'casing']);
    expect(figure.inputs.map((input) => input.text)).toEqual(['254 mm', '168.3 mm', '7.2 m']);
    expect(lines[figure.span?.line ?? -1]).toContain('grout');
  });

  test('only the recovery waits, for a third reading; nothing is in doubt, and ids are unique', () => {
    const waiting = record.figures.filter((figure) => figure.waitsFor.length > 0 || figure.doubtful);
    expect(waiting.map((figure) => figure.id)).toEqual(['test.1.recovery.transmissivity']);
    expect(waiting[0]?.waitsFor).toEqual(['other figures (fewer than three readings in the window)']);
    expect(new Set(record.figures.map((figure) => figure.id)).size).toBe(record.figures.length);
  });

  test('fits its own schema', () => {
    expect(WellRecord.safeParse(record).error).toBeUndefined();
  });

  test('tells the gaps, the top of the casing and the deepest depth', () => {
    expect(record.centralizerGaps[0]?.gaps.map((gap) => gap.bottom)).toEqual([1.5, 4, 6.7, 7.2]);
    expect(record.topOfCasing).toBeCloseTo(0.45, 9);
    expect(record.depth).toBe(61);
  });
});
