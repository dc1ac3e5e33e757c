import { describe, expect, it } from 'vitest';
import {
  belowTop,
  elevationOf,
  entranceVelocity,
  granulesDose,
  liquidDose,
  openAreaOf,
  packMass,
  screenLength,
  waterColumn,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

describe('levels', () => {
  it('shift with the top of the casing and the ground', () => {
    expect(belowTop(5.2, 0.45)).toBeCloseTo(5.65, 12);
    expect(elevationOf(287.4, 5.2)).toBeCloseTo(282.2, 12);
  });

  it('leave a column above a depth, of a flowing well too', () => {
    expect(figureOf(waterColumn(61, 5.2))).toBeCloseTo(55.8, 12);
    expect(figureOf(waterColumn(61, -1.5))).toBeCloseTo(62.5, 12);
    expect(figureOf(waterColumn(5, 5))).toBe(0);
    expectRefused(/below that depth/, waterColumn(5, 6));
  });
});

describe('screen and pack', () => {
  it('lengthens as the velocity falls', () => {
    expect(figureOf(screenLength(0.01, 0.1, 0.01))).toBeCloseTo(10, 12);
    expect(figureOf(entranceVelocity(0.01, 0.1, 10))).toBeCloseTo(0.01, 12);
    expect(figureOf(openAreaOf(0.168, 0.1))).toBeCloseTo(0.052779, 6);
    expect(figureOf(packMass(0.25))).toBeCloseTo(400, 9);
    expect(figureOf(packMass(0.25, 1500))).toBeCloseTo(375, 9);
    expect(figureOf(packMass(0))).toBe(0);
  });

  it('is refused where something is missing', () => {
    expectRefused(/nothing was pumped/, entranceVelocity(0, 1, 1), screenLength(0, 1, 1));
    expectRefused(/no open area/, entranceVelocity(1, 0, 1), entranceVelocity(1, 1, 0));
    expectRefused(/not above zero/, screenLength(1, 0, 1), screenLength(1, 1, 0));
    expectRefused(/outside diameter/, openAreaOf(0, 0.1));
    expectRefused(/open share/, openAreaOf(0.1, 0), openAreaOf(0.1, 1));
    expectRefused(/volume is below/, packMass(-1));
    expectRefused(/bulk density/, packMass(1, 0));
  });
});

describe('doses', () => {
  it('keep the chlorine', () => {
    // 1 m³ at 100 mg/L holds 100 g of chlorine.
    expect(figureOf(granulesDose(1, 0.1, 0.65)) * 0.65).toBeCloseTo(0.1, 12);
    expect(figureOf(liquidDose(1, 0.1, 0.12, 1)) * 1000 * 0.12).toBeCloseTo(0.1, 12);
    expect(figureOf(liquidDose(1, 0.1, 0.12, 1.17)) * 1170 * 0.12).toBeCloseTo(0.1, 12);
    expect(figureOf(granulesDose(0, 0, 0.8))).toBe(0);
    expect(figureOf(liquidDose(0, 0, 0.2, 1))).toBe(0);
  });

  it('are refused for a product that does not exist', () => {
    expectRefused(/no granules/, granulesDose(1, 0.1, 0), granulesDose(1, 0.1, 0.81));
    expectRefused(/no liquid/, liquidDose(1, 0.1, 0, 1), liquidDose(1, 0.1, 0.21, 1));
    expectRefused(/water is below/, granulesDose(-1, 0.1, 0.65), liquidDose(-1, 0.1, 0.12, 1));
    expectRefused(/strength is below/, granulesDose(1, -0.1, 0.65), liquidDose(1, -0.1, 0.12, 1));
    expectRefused(/relative density/, liquidDose(1, 0.1, 0.12, 0));
  });
});
