import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { show, textIn, unitLabel } from '../../server/record/display.ts';
import { decimals, formatNumber, significant, significantDigitsOf } from '../../server/record/format-number.ts';

interface Quantity {
  to(unit: string): { readonly scalar: number };
}

/** js-quantities, a general library of units; it ships no types. */
const Qty: (number: number, unit: string) => Quantity = createRequire(import.meta.url)('js-quantities');

const metric = { depth: 'm', diameter: 'mm', gallon: null, written: true };
const feet = { depth: 'ft', diameter: 'in', gallon: 'gal-us', written: true } as const;
const imperial = { ...feet, gallon: 'gal-imp' } as const;

describe('numbers as shown', () => {
  test.each([
    [0.20466, significant(3), '0.205'],
    [0.29, significant(3), '0.290'],
    [1834.95, significant(3), '1830'],
    [9.996, significant(3), '10.0'],
    [0, significant(3), '0.00'],
    [0.0000986, significant(3), '0.0000986'],
    [5.6e-16, significant(3), '0.00'],
    [-0.0001, decimals(1), '0.0'],
    [7.65, decimals(2), '7.65'],
    [1e21, significant(3), '1000000000000000000000'],
    [Number.NaN, significant(3), '?'],
    [Number.POSITIVE_INFINITY, decimals(1), '?'],
  ] as const)('%s', (value, digits, text) => {
    expect(formatNumber(value, digits)).toBe(text);
  });

  test.each([
    ['0.290', 3],
    ['61', 2],
    ['0', 1],
    ['12.50', 4],
  ])('digits of %s', (text, count) => {
    expect(significantDigitsOf(text)).toBe(count);
  });
});

describe('units as shown', () => {
  // The general units library is the oracle of the factors.
  test.each([
    ['length', 'm', 'ft', 12.5],
    ['diameter', 'm', 'in', 0.254],
    ['volume', 'm3', 'gal', 0.205],
    ['mass', 'kg', 'lb', 195],
    ['velocity', 'm/s', 'ft/min', 15.24],
    ['rate', 'm3/s', 'gal/min', 0.000667],
    ['air-rate', 'm3/s', 'ft3/min', 0.35],
    ['density', 'kg/m3', 'lb/gal', 1869],
    ['pressure', 'Pa', 'psi', 260_000],
    ['mass-per-length', 'kg/m', 'lb/ft', 25.35],
    ['transmissivity', 'm2/s', 'ft2/day', 0.00446],
    ['entrance-velocity', 'm/s', 'ft/s', 0.03],
  ] as const)('%s', (shown, si, us, value) => {
    const expected = Qty(value, si).to(us).scalar;
    const number = Number.parseFloat(show(value, shown, feet, significant(5)).text);
    expect(number / expected).toBeCloseTo(1, 4);
  });

  test('a file shows its own units first', () => {
    expect(show(0.2047, 'volume', metric)).toEqual({ text: '0.205 m³', otherText: '54.1 US gal' });
    expect(show(0.2047, 'volume', feet)).toEqual({ text: '54.1 US gal', otherText: '0.205 m³' });
    expect(show(0.2047, 'volume', imperial).text).toBe('45.0 imp. gal');
    expect(show(0.2047, 'volume', metric, significant(3), 'L').text).toBe('205 L');
    expect(show(0.2047, 'volume', metric, significant(3), 'ft3')).toEqual({ text: '7.23 ft³', otherText: '0.205 m³' });
  });

  test('a value without another unit has no other text', () => {
    expect(show(0.5, 'ratio', metric)).toEqual({ text: '0.500', otherText: '' });
    expect(show(44.6128, 'degrees', metric, decimals(4))).toEqual({ text: '44.6128°', otherText: '' });
  });

  test('what reads as zero reads so in the other system, with as many decimals', () => {
    const zero = { text: '0.00 m', otherText: '0.00 ft' };
    for (const left of [0, 5.6e-16, -5.6e-16, 3e-12]) expect(show(left, 'length', metric, decimals(2))).toEqual(zero);
    expect(show(0.004, 'length', metric, decimals(2))).toEqual({ text: '0.00 m', otherText: '0.01 ft' });
    expect(show(0, 'length', metric)).toEqual(zero);
  });

  test('labels are printed with their signs', () => {
    expect([unitLabel('m3'), unitLabel('gpm-us'), unitLabel('no such unit')]).toEqual(['m³', 'US gpm', 'no such unit']);
    expect(textIn(2.5, 'no such unit', decimals(1))).toBe('2.5 no such unit');
  });
});
