import { describe, expect, it } from 'vitest';
import {
  deliveredAir,
  nearestDistance,
  penetrationRate,
  rateBreak,
  sparePressure,
  standardAtmosphere,
  upholeVelocity,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

describe('uphole velocity', () => {
  it('is flow over the ring', () => {
    expect(figureOf(upholeVelocity(0.283, 0.254, 0.1143))).toBeCloseTo(7.0032, 4);
  });

  it('is refused without flow or ring', () => {
    expectRefused(/as wide as/, upholeVelocity(1, 0.1, 0.1));
    expectRefused(/no flow/, upholeVelocity(0, 0.2, 0.1), upholeVelocity(Number.NaN, 0.2, 0.1));
  });
});

describe('air', () => {
  it('loses a share, and weighs less at altitude, each once', () => {
    expect(figureOf(deliveredAir(0.35, 0.15, 1))).toBeCloseTo(0.2975, 12);
    expect(figureOf(deliveredAir(0.35, 0, 0.822))).toBeCloseTo(0.2877, 12);
    expect(figureOf(deliveredAir(0.35, 0.15, 0.822))).toBeCloseTo(0.35 * 0.85 * 0.822, 12);
    expect(figureOf(standardAtmosphere(0)).densityRatio).toBeCloseTo(1, 5);
    expect(figureOf(standardAtmosphere(2000)).densityRatio).toBeCloseTo(0.8216, 4);
  });

  it('is refused outside its range', () => {
    expectRefused(/rated volume/, deliveredAir(0, 0.1, 1));
    expectRefused(/share lost/, deliveredAir(1, 1, 1), deliveredAir(1, -0.1, 1));
    expectRefused(/density ratio/, deliveredAir(1, 0, 0), deliveredAir(1, 0, Number.NaN));
    expectRefused(
      /height is outside/,
      standardAtmosphere(-1001),
      standardAtmosphere(11_001),
      standardAtmosphere(Number.NaN),
    );
    expect(standardAtmosphere(-1000).ok && standardAtmosphere(11_000).ok).toBe(true);
  });

  it('has less pressure the more water stands on it, until it cannot lift', () => {
    expect(figureOf(sparePressure(2.4e6, 55.8)) / 1000).toBeCloseTo(1852.8, 1);
    expect(figureOf(sparePressure(2.4e6, 300))).toBeLessThan(0);
    expect(figureOf(sparePressure(0, 0))).toBeCloseTo(0, 12);
    expectRefused(/pressure is below/, sparePressure(-1, 1), sparePressure(Number.NaN, 1));
    expectRefused(/height of the water/, sparePressure(1, -1));
  });
});

describe('penetration', () => {
  it('is length over time', () => {
    expect(figureOf(penetrationRate(6, 18 * 60))).toBeCloseTo(1 / 180, 12);
    expectRefused(/nothing was drilled/, penetrationRate(0, 1));
    expectRefused(/time taken/, penetrationRate(1, 0));
  });

  it('breaks by the same factor, faster or slower', () => {
    expect(figureOf(rateBreak(1, 3))).toBe(3);
    expect(figureOf(rateBreak(3, 1))).toBe(3);
    expect(figureOf(rateBreak(2, 2))).toBe(1);
    expectRefused(/rate is not above zero/, rateBreak(0, 1), rateBreak(1, 0));
  });

  it('is held against the nearest contact, above or below', () => {
    expect(figureOf(nearestDistance(13.2, [6.1, 14]))).toBeCloseTo(0.8, 12);
    expect(figureOf(nearestDistance(13.2, [12.7, 14]))).toBeCloseTo(0.5, 12);
    expectRefused(/nothing to be near/, nearestDistance(6, []));
  });
});
