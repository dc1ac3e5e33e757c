import { describe, expect, it } from 'vitest';
import {
  type AnnulusPiece,
  deliveredAir,
  depthsWithoutNeighbour,
  flowForVelocity,
  greatestWaterColumn,
  penetrationRate,
  type RateSpan,
  rateBreaks,
  seaLevelFlow,
  slowestUpholeVelocity,
  sparePressure,
  standardAtmosphere,
  upholeVelocity,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const piece = (top: number, bottom: number, outer: number | null, inner: number | null): AnnulusPiece => ({
  top,
  bottom,
  outer,
  inner,
  volume: null,
});

describe('uphole velocity', () => {
  it('is slowest where the annulus is widest', () => {
    const slowest = figureOf(
      slowestUpholeVelocity(0.283, [
        piece(0, 7, 0.1683, 0.1143),
        piece(7, 20, 0.254, 0.1143),
        piece(20, 61, 0.15558, 0.1143),
      ]),
    );
    expect(slowest).toMatchObject({ top: 7, bottom: 20 });
    expect(slowest.velocity).toBeCloseTo(7.0032, 4);
  });

  it('names the first of equal places', () => {
    const slowest = slowestUpholeVelocity(0.1, [piece(0, 1, 0.2, 0.1), piece(2, 3, 0.2, 0.1)]);
    expect(figureOf(slowest)).toMatchObject({ top: 0, bottom: 1 });
  });

  it('is refused where the slow place might be unknown', () => {
    expectRefused(
      /not known from 1 m to 2 m/,
      slowestUpholeVelocity(1, [piece(0, 1, 0.2, 0.1), piece(1, 2, null, 0.1)]),
    );
    expectRefused(/not known from 1 m to 2 m/, slowestUpholeVelocity(1, [piece(1, 2, 0.2, null)]));
    expectRefused(/as wide as/, slowestUpholeVelocity(1, [piece(1, 2, 0.1, 0.2)]), upholeVelocity(1, 0.1, 0.1));
    expectRefused(/no annulus/, slowestUpholeVelocity(1, []));
    expectRefused(/no flow/, upholeVelocity(0, 0.2, 0.1), slowestUpholeVelocity(-1, [piece(0, 1, 0.2, 0.1)]));
  });

  it('asks for a flow that gives it', () => {
    const flow = figureOf(flowForVelocity(20, 0.2, 0.1));
    expect(figureOf(upholeVelocity(flow, 0.2, 0.1))).toBeCloseTo(20, 12);
    expectRefused(/not above zero/, flowForVelocity(0, 0.2, 0.1));
    expectRefused(/as wide as/, flowForVelocity(1, 0.1, 0.1));
  });
});

describe('air', () => {
  it('loses a share, and weighs less at altitude', () => {
    expect(figureOf(deliveredAir(0.35, 0.15))).toBeCloseTo(0.2975, 12);
    expect(figureOf(deliveredAir(0.35, 0))).toBe(0.35);
    expect(figureOf(seaLevelFlow(0.35, 0.822))).toBeCloseTo(0.2877, 12);
    expect(figureOf(standardAtmosphere(0)).densityRatio).toBeCloseTo(1, 5);
    expect(figureOf(standardAtmosphere(2000)).densityRatio).toBeCloseTo(0.8216, 4);
  });

  it('is refused outside its range', () => {
    expectRefused(/rated volume/, deliveredAir(0, 0.1));
    expectRefused(/share lost/, deliveredAir(1, 1), deliveredAir(1, -0.1));
    expectRefused(/no flow/, seaLevelFlow(0, 1));
    expectRefused(/density ratio/, seaLevelFlow(1, 0));
    expectRefused(
      /height is outside/,
      standardAtmosphere(-1001),
      standardAtmosphere(11_001),
      standardAtmosphere(Number.NaN),
    );
    expect(standardAtmosphere(-1000).ok && standardAtmosphere(11_000).ok).toBe(true);
  });

  it('lifts a column until nothing is left', () => {
    const column = figureOf(greatestWaterColumn(2.4e6));
    expect(column).toBeCloseTo(244.73, 2);
    expect(figureOf(sparePressure(2.4e6, column))).toBeCloseTo(0, 6);
    expect(figureOf(sparePressure(2.4e6, 300))).toBeLessThan(0);
    expect(figureOf(sparePressure(1e5, 1, 1030))).toBeCloseTo(1e5 - 1030 * 9.80665, 6);
    expect(figureOf(greatestWaterColumn(0))).toBe(0);
    expect(figureOf(sparePressure(0, 0))).toBeCloseTo(0, 12);
    expectRefused(/pressure is below/, greatestWaterColumn(-1));
    expectRefused(/below zero/, sparePressure(-1, 1), sparePressure(1, -1));
    expectRefused(/density is not/, greatestWaterColumn(1, 0), sparePressure(1, 1, 0));
  });
});

describe('penetration', () => {
  it('is length over time', () => {
    expect(figureOf(penetrationRate(6, 18 * 60))).toBeCloseTo(1 / 180, 12);
    expectRefused(/nothing was drilled/, penetrationRate(0, 1));
    expectRefused(/time taken/, penetrationRate(1, 0));
  });

  const span = (top: number, bottom: number, rate: number | null): RateSpan => ({ top, bottom, rate });

  it('breaks where the rate changes by the factor, faster or slower', () => {
    const spans = [span(13, 19, 2), span(0, 7, 1), span(7, 13, 1.5), span(19, 25, 0.5)];
    expect(figureOf(rateBreaks(spans, 2))).toEqual([{ depth: 19, above: 2, below: 0.5, factor: 4 }]);
    expect(figureOf(rateBreaks(spans, 1.5)).map(({ depth }) => depth)).toEqual([7, 19]);
    expect(figureOf(rateBreaks([span(0, 1, 1), span(1, 2, 2)], 2))).toHaveLength(1);
  });

  it('does not break across a gap, or where a rate is missing or nothing', () => {
    expect(figureOf(rateBreaks([span(0, 1, 1), span(2, 3, 9)], 2))).toEqual([]);
    expect(figureOf(rateBreaks([span(0, 1, null), span(1, 2, 9), span(2, 3, null)], 2))).toEqual([]);
    expect(figureOf(rateBreaks([span(0, 1, 0), span(1, 2, 9), span(2, 3, 0)], 2))).toEqual([]);
    expect(figureOf(rateBreaks([], 2))).toEqual([]);
    expectRefused(/factor/, rateBreaks([], 1));
  });

  it('is held against the contacts', () => {
    expect(depthsWithoutNeighbour([6, 13.2], [6.1, 14], 0.5)).toEqual([13.2]);
    expect(depthsWithoutNeighbour([6.5], [6], 0.5)).toEqual([]);
    expect(depthsWithoutNeighbour([6], [], 0.5)).toEqual([6]);
  });
});
