import { describe, expect, it } from 'vitest';
import { stringOf } from './log-of.ts';

// Sizes: ASME B36.10M and ASTM F480. 6 in nominal is 6.625 in outside, 0.280 in wall in schedule 40; 4 in is 4.500 in,
// 0.237 in in schedule 40; 12 in is 12.750 in; 14 in is 14.000 in (walls of schedule 40 from memory).

const inch = 0.0254;
const sizeOf = (units: string, size: string) => stringOf(`units ${units}`, `casing 0 - 40 ${size}`).size;

describe('the size of a string', () => {
  it.each([
    ['ft in', 'steel 6 sch 40', 6.625, 0.28, 'tabled for 6 in nominal'],
    ['ft in', 'pvc 4 sch 40', 4.5, 0.237, 'tabled for 4 in nominal'],
    ['ft in', 'steel 6', 6.625, null, 'tabled for 6 in nominal'],
    ['m mm', 'steel 6 in sch 40', 6.625, 0.28, 'tabled for 6 in nominal'],
    ['m mm', 'steel 6"', 6.625, null, 'tabled for 6 in nominal'],
    ['ft in', 'steel nominal 6, sch 40', 6.625, 0.28, 'tabled for 6 in nominal'],
    ['m mm', 'steel nominal 150 sch 40', 6.625, 0.28, 'tabled for 150 nominal'],
    ['m mm', 'steel 150 sch 40', 6.625, 0.28, 'tabled for 150 nominal'],
    ['ft in', 'steel 6-5/8 sch 40', 6.625, 0.28, 'written'],
    ['ft in', 'steel 6.625 x 0.25', 6.625, 0.25, 'written'],
    ['ft in', 'steel 14 x 0.375', 14, 0.375, 'written'],
    ['ft in', 'pvc 4.5 sdr 21', 4.5, 4.5 / 21, 'written'],
    ['ft in', 'pvc 6 sdr 26', 6.625, 6.625 / 26, 'tabled for 6 in nominal'],
  ])('%s: %s', (units, size, outside, wall, basis) => {
    const found = sizeOf(units, size);
    expect(found.outsideDiameter).toBeCloseTo(outside * inch, 9);
    if (wall === null) expect(found.wallThickness).toBeNull();
    else expect(found.wallThickness).toBeCloseTo(wall * inch, 9);
    expect(found.insideDiameter === null).toBe(wall === null);
    expect(found.basis).toBe(basis);
  });

  it('is what a metric file writes, where no schedule makes it nominal', () => {
    expect(sizeOf('m mm', 'steel 168.3 x 6.4')).toMatchObject({ outsideDiameter: 0.1683, wallThickness: 0.0064 });
    expect(sizeOf('m mm', 'pvc 150')).toMatchObject({ outsideDiameter: 0.15, nominal: null });
  });

  it('takes the wall of a schedule for an outside diameter rounded to millimetres', () => {
    const size = sizeOf('m mm', 'steel 168.3 sch 40');
    expect(size.outsideDiameter).toBe(0.1683);
    expect(size.wallThickness).toBeCloseTo(0.28 * inch, 9);
  });

  it('is not known for a whole inch size beside a wall, which may be nominal or outside', () => {
    const size = sizeOf('ft in', 'steel 6 x 0.25');
    expect(size).toMatchObject({ outsideDiameter: null, insideDiameter: null, basis: '6 may be nominal or outside' });
    expect(size.wallThickness).toBeCloseTo(0.25 * inch, 9);
  });

  it('is known for such a size once the line says which', () => {
    const nominal = sizeOf('ft in', 'steel 6 x 0.25, nominal 6');
    expect(nominal.outsideDiameter).toBeCloseTo(6.625 * inch, 9);
    expect(nominal.wallThickness).toBeCloseTo(0.25 * inch, 9);
    const outside = sizeOf('ft in', 'steel 6 x 0.25, od 6');
    expect(outside.outsideDiameter).toBeCloseTo(6 * inch, 9);
    expect(outside).toMatchObject({ basis: 'written', nominal: null });
  });

  it('has what is written of the inside and the couplings', () => {
    const size = sizeOf('m mm', 'steel od 168.3, id 154, coupling 188');
    expect(size).toMatchObject({ outsideDiameter: 0.1683, insideDiameter: 0.154, coupling: { value: 0.188 } });
  });

  it('is open where the notes say ?, and empty where they say nothing', () => {
    const asked = sizeOf('m mm', 'steel ?');
    expect(asked).toMatchObject({ outside: { value: null, written: '?' }, outsideDiameter: null, basis: '' });
    expect(sizeOf('m mm', 'steel welded')).toMatchObject({ outside: null, span: null, basis: '' });
  });
});
