import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { unitById } from '../../grammar/units.ts';
import { inBothSystems, numberText, otherUnits, unitText } from '../../server/features/display.ts';

interface Quantity {
  to(unit: string): Quantity;
  readonly scalar: number;
}

const Qty: (number: number, unit: string) => Quantity = createRequire(import.meta.url)('js-quantities');

const shown = (si: number, id: string): readonly string[] => {
  const unit = unitById(id);
  if (unit === undefined) throw new Error(id);
  return inBothSystems(si, unit);
};

describe('a value in both systems', () => {
  // js-quantities, a general library of units, gives the other figure; four digits are shown.
  test.each([
    ['m', 38.5, 'ft', 'm', 'ft'],
    ['ft', 38.5, 'm', 'ft', 'm'],
    ['mm', 168.3, 'in', 'mm', 'in'],
    ['in', 6.25, 'mm', 'in', 'mm'],
    ['m3', 0.29, 'ft3', 'm^3', 'ft^3'],
    ['L', 40, 'US gal', 'L', 'gal'],
    ['kg', 40, 'lb', 'kg', 'lb'],
    ['L/min', 40, 'US gpm', 'L/min', 'gal/min'],
    ['kPa', 2400, 'psi', 'kPa', 'psi'],
    ['kW', 0.56, 'hp', 'kW', 'hp'],
  ])('%s %d in %s', (id, number, label, from, to) => {
    const unit = unitById(id);
    const other = Qty(number, from).to(to).scalar;
    const text = shown(number * (unit?.factor ?? Number.NaN), id);
    const [figure, ...rest] = text[1]?.replace('³', '3').split(' ') ?? [];
    expect(rest.join(' ')).toBe(label);
    expect(Math.abs(Number(figure) / other - 1)).toBeLessThan(6e-4);
  });

  test('temperatures have an offset', () => {
    expect(shown(273.15 + 4, 'C')).toEqual(['4 °C', '39.2 °F']);
  });

  test('concentrations have one system', () => {
    const unit = unitById('mg/L');
    expect(unit && otherUnits(unit)).toEqual([]);
  });

  test('numbers keep their whole part and four digits', () => {
    expect([0.1683, 12.4672, 1234567.8, 0, 7.2, 1e-9].map(numberText)).toEqual([
      '0.1683',
      '12.47',
      '1234568',
      '0',
      '7.2',
      '1e-9',
    ]);
    expect(numberText(Number.NaN)).toBe('?');
  });

  test('units are written as they are read', () => {
    expect(['m3', 'm3/min', 'kg/m3', 'm2/m', 'gal-us', 'ug/L'].map(unitText)).toEqual([
      'm³',
      'm³/min',
      'kg/m³',
      'm²/m',
      'US gal',
      'µg/L',
    ]);
  });
});
