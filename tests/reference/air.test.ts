import { describe, it } from 'vitest';
import { sparePressure, standardAtmosphere, upholeVelocity } from '../../server/calculations/index.ts';
import { expectNear, figureOf, foot, inch, minute, psi } from './measures.ts';

describe('uphole velocity', () => {
  // A published worked example: 283 L/s, 155.58 mm bit, 114.3 mm rod: 1,941 m/min; exact 1,940.6 (derived).
  it('283 L/s up 155.58 mm around 114.3 mm: 1,941 m/min', () => {
    const velocity = figureOf(upholeVelocity(0.283, 0.15558, 0.1143));
    expectNear(velocity * minute, 1941, 0.5);
    expectNear(velocity * minute, 1940.6, 0.06);
  });

  it('keeps to 183.35 cfm / (D² − d²) in inches and ft/min', () => {
    const cfm = foot ** 3 / minute;
    const velocity = figureOf(upholeVelocity(600 * cfm, 6 * inch, 4.5 * inch));
    expectNear((velocity * minute) / foot, (183.35 * 600) / (6 ** 2 - 4.5 ** 2), 1);
  });
});

describe('air at altitude', () => {
  // U.S. Standard Atmosphere 1976: metres, K, Pa, kg/m³, from memory.
  it.each([
    [0, 288.15, 101_325, 1.225],
    [1000, 281.65, 89_875, 1.1116],
    [2000, 275.15, 79_495, 1.0065],
    [3000, 268.65, 70_109, 0.9091],
    [5000, 255.65, 54_020, 0.7361],
  ])('%d m: %d K, %d Pa, %d kg/m³', (height, temperature, pressure, density) => {
    const air = figureOf(standardAtmosphere(height));
    expectNear(air.temperature, temperature, 0.005);
    expectNear(air.pressure, pressure, 5);
    expectNear(air.density, density, 0.0003);
  });
});

describe('water above the bit', () => {
  // 2.31 ft of fresh water for each psi: handbook figure, from memory.
  it('1 psi lifts 2.31 ft and no more', () => expectNear(figureOf(sparePressure(psi, 2.31 * foot)) / psi, 0, 0.002));
});
