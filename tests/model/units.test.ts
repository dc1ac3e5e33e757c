import { describe, expect, it } from 'vitest';
import { parseText, reparse } from '../../grammar/index.ts';
import { buildLog } from '../../server/model/build.ts';
import { fileUnits, unitsOfWords } from '../../server/model/units.ts';
import { logOf, stringOf } from './log-of.ts';

// Factors: foot 0.3048 m, inch 25.4 mm, US gallon 3.785411784 L, imperial gallon 4.54609 L (NIST SP 811, appendix B).

describe('units of the file', () => {
  it.each([
    [['m', 'mm'], 'm', 'mm', null],
    [['ft', 'in'], 'ft', 'in', null],
    [['ft', 'in', 'gal-us'], 'ft', 'in', 'gal-us'],
    [['gal-imp', 'in', 'ft'], 'ft', 'in', 'gal-imp'],
    [['m', 'cm'], 'm', 'cm', null],
    [['ft'], 'ft', 'in', null],
    [['in'], 'ft', 'in', null],
    [['m'], 'm', 'mm', null],
    [['furlong'], 'm', 'mm', null],
  ])('reads %j', (words, depth, diameter, gallon) => {
    expect(unitsOfWords(words)).toEqual({ depth, diameter, gallon, written: true });
  });

  it('are metres and millimetres where no line says', () => {
    expect(logOf('well A').units).toEqual({ depth: 'm', diameter: 'mm', gallon: null, written: false });
  });

  it('are those of the first line that says something', () => {
    expect(fileUnits(parseText('units\nunits ft in\nunits m mm'))).toMatchObject({ depth: 'ft', diameter: 'in' });
  });
});

describe('bare numbers', () => {
  it('take the unit of their place', () => {
    const [hole] = logOf('units ft in', 'hole', '0 - 20 10').hole;
    expect(hole?.interval.bottom).toMatchObject({ number: 20, unit: 'ft', unitWritten: false });
    expect(hole?.interval.bottom?.value).toBeCloseTo(20 * 0.3048, 12);
    expect(hole?.diameter?.value).toBeCloseTo(10 * 0.0254, 12);
  });

  it('give way to a unit that is written', () => {
    const [hole] = logOf('units m mm', 'hole', '0 - 12\'6" 10 in').hole;
    expect(hole?.interval.bottom?.value).toBeCloseTo(12.5 * 0.3048, 12);
    expect(hole?.diameter).toMatchObject({ unit: 'in', unitWritten: true, written: '10 in' });
  });

  it('mean something else once the units line is changed', () => {
    const before = parseText('units m mm\nhole\n0 - 20 10');
    expect(buildLog(before).hole[0]?.interval.bottom?.value).toBe(20);
    const after = reparse(before, 0, 1, ['units ft in']);
    expect(after.lines[2]).toBe(before.lines[2]);
    expect(buildLog(after).hole[0]?.interval.bottom?.value).toBeCloseTo(20 * 0.3048, 12);
  });
});

describe('gallons', () => {
  const rate = (units: string) => logOf(units, 'water', '120 8 gpm').water.found[0]?.rate;

  it('are US gallons where the file says so', () => {
    expect(rate('units ft in gal-us')?.value).toBeCloseTo((8 * 3.785411784e-3) / 60, 15);
    expect(rate('units ft in gal-us')?.unit).toBe('gpm-us');
  });

  it('are imperial gallons where the file says so', () => {
    expect(rate('units ft in gal-imp')?.value).toBeCloseTo((8 * 4.54609e-3) / 60, 15);
  });

  it('have no value where the file does not say', () => {
    expect(rate('units ft in')).toMatchObject({ value: null, number: 8, unit: 'gpm', written: '8 gpm' });
  });
});

describe('slot widths', () => {
  const slot = (units: string, written: string) =>
    stringOf(units, 'casing 0 - 30 pvc 4 sdr 26', `screen 30 - 40 ${written}`).screens[0]?.slot;

  it.each([
    ['units ft in', 'slot 20', 20 * 0.001 * 0.0254],
    ['units ft in', 'slot 0.02', 0.02 * 0.0254],
    ['units m mm', 'slot 0.5', 0.0005],
    ['units m cm', 'slot 0.5', 0.0005],
    ['units m mm', 'slot #10', 10 * 0.001 * 0.0254],
    ['units m mm', 'slot 0.02 in', 0.02 * 0.0254],
    ['units ft in', 'slot 0.5 mm', 0.0005],
  ])('%s: %s', (units, written, metres) => {
    expect(slot(units, written)?.value).toBeCloseTo(metres, 12);
  });

  it('are unknown where the notes say so', () => {
    expect(slot('units m mm', 'slot ?')).toMatchObject({ value: null, written: '?' });
  });
});
