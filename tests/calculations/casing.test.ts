import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buoyedWeight,
  centralizerGaps,
  dimensionRatio,
  elasticCollapse,
  gradedCollapse,
  hoistLoad,
  hydrostaticPressure,
  insideDiameter,
  jointsTally,
  nominalOfOutside,
  nominalSizes,
  outsideOfNominal,
  ovalCollapse,
  type PipeMaterial,
  PSI,
  pipeMass,
  plasticCollapse,
  pressureDifference,
  SDR_SERIES,
  schedulesOf,
  steelCollapse,
  wallOf,
  wallOfSdr,
  warmPvcShare,
  widestGap,
  yieldCollapse,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const inch = 0.0254;
const outside = fc.double({ min: 0.05, max: 1, noNaN: true });
const ratio = fc.double({ min: 8, max: 80, noNaN: true });

describe('joints', () => {
  it('are added up against the string', () => {
    const tally = jointsTally([6.1, 1.55], 7.5);
    expect(tally.total).toBeCloseTo(7.65, 12);
    expect(tally.difference).toBeCloseTo(0.15, 12);
    expect(tally.connections).toBe(1);
    expect(jointsTally([], 7.5)).toEqual({ total: 0, difference: -7.5, connections: 0 });
  });
});

describe('centralizers', () => {
  it('leave gaps to the top, between them and to the shoe', () => {
    const gaps = centralizerGaps([6.7, 1.5, 4], 7.2, 0);
    expect(gaps.map(({ top, bottom }) => [top, bottom])).toEqual([
      [0, 1.5],
      [1.5, 4],
      [4, 6.7],
      [6.7, 7.2],
    ]);
    const widest = figureOf(widestGap(gaps));
    expect(widest).toMatchObject({ top: 4, bottom: 6.7 });
    expect(widest.length).toBeCloseTo(2.7, 12);
  });

  it('outside the string do not count, on its ends they do', () => {
    expect(centralizerGaps([-1, 9], 7, 0)).toEqual([{ top: 0, bottom: 7, length: 7 }]);
    expect(centralizerGaps([0, 7, 3, 3], 7, 0)).toHaveLength(2);
    expect(centralizerGaps([], 0, 0)).toEqual([]);
  });

  it('leave the highest of equal gaps as the widest, and none without a string', () => {
    expect(figureOf(widestGap(centralizerGaps([2, 4], 6, 0)))).toEqual({ top: 0, bottom: 2, length: 2 });
    expectRefused(/no length/, widestGap([]));
  });

  it('leave gaps that add up to the string', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -5, max: 105, noNaN: true })), (positions) => {
        const sum = centralizerGaps(positions, 100, 0).reduce((length, gap) => length + gap.length, 0);
        expect(sum).toBeCloseTo(100, 9);
      }),
    );
  });
});

describe('pipe', () => {
  it('has an inside, a ratio and a wall that agree', () => {
    fc.assert(
      fc.property(outside, ratio, (diameter, dr) => {
        const wall = figureOf(wallOfSdr(diameter, dr));
        expect(figureOf(dimensionRatio(diameter, wall)) / dr).toBeCloseTo(1, 10);
        expect(figureOf(insideDiameter(diameter, wall)) + 2 * wall).toBeCloseTo(diameter, 12);
      }),
    );
  });

  it('is refused without a wall or a bore', () => {
    expectRefused(/no thickness/, insideDiameter(0.1, 0), dimensionRatio(0.1, 0), pipeMass(0.1, 0));
    expectRefused(/two walls/, insideDiameter(0.1, 0.05), dimensionRatio(0.1, 0.05), pipeMass(0.1, 0.06));
    expectRefused(/no bore/, wallOfSdr(0.1, 2), plasticCollapse(2));
    expectRefused(/not above zero/, wallOfSdr(0, 21));
  });

  it('weighs what its ring of metal weighs', () => {
    fc.assert(
      fc.property(outside, ratio, (diameter, dr) => {
        const wall = diameter / dr;
        const ring = (Math.PI / 4) * (diameter ** 2 - (diameter - 2 * wall) ** 2);
        expect(figureOf(pipeMass(diameter, wall, 1400)) / (1400 * ring)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('pipe sizes', () => {
  const materials: PipeMaterial[] = ['steel', 'plastic'];

  it.each(materials)('of %s lead from nominal to outside and back, and leave a bore in every schedule', (material) => {
    for (const nominal of nominalSizes(material)) {
      const diameter = figureOf(outsideOfNominal(nominal, material));
      expect(figureOf(nominalOfOutside(diameter, material, 1e-6))).toBeCloseTo(nominal, 9);
      for (const schedule of schedulesOf(nominal, material)) {
        expect(insideDiameter(diameter, figureOf(wallOf(nominal, schedule, material))).ok).toBe(true);
      }
    }
  });

  it.each(materials)('of %s have thicker walls in higher schedules', (material) => {
    for (const nominal of nominalSizes(material)) {
      const numbers = schedulesOf(nominal, material).filter((name) => /^\d+$/.test(name));
      const walls = numbers.map((name) => figureOf(wallOf(nominal, name, material)));
      expect(walls).toEqual([...walls].sort((a, b) => a - b));
    }
  });

  it('go up from size to size, and are known by their metric names', () => {
    for (const material of materials) {
      const outsides = nominalSizes(material).map((nominal) => figureOf(outsideOfNominal(nominal, material)));
      expect(outsides).toEqual([...outsides].sort((a, b) => a - b));
    }
    expect(figureOf(outsideOfNominal(0.15, 'steel'))).toBeCloseTo(0.168275, 9);
    expect(figureOf(outsideOfNominal(0.1, 'plastic'))).toBeCloseTo(0.1143, 9);
  });

  it('read the usual ways to write a schedule', () => {
    const six = 6 * inch;
    for (const name of ['40', 'sch 40', 'SCH40', 'Schedule 40', 'sch. 40']) {
      expect(figureOf(wallOf(six, name, 'steel')) / inch).toBeCloseTo(0.28, 9);
    }
    for (const name of ['std', 'STD WT', 'stdwt'])
      expect(figureOf(wallOf(six, name, 'steel')) / inch).toBeCloseTo(0.28, 9);
    expect(figureOf(wallOf(six, 'xs', 'steel')) / inch).toBeCloseTo(0.432, 9);
  });

  it('are refused by the name of the standard that lacks them', () => {
    expectRefused(
      /ASME B36.10M has no such nominal/,
      outsideOfNominal(7 * inch, 'steel'),
      wallOf(7 * inch, '40', 'steel'),
    );
    expectRefused(/ASTM F480 has no such nominal/, outsideOfNominal(7 * inch, 'plastic'));
    expectRefused(
      /ASME B36.10M has no such schedule/,
      wallOf(6 * inch, '41', 'steel'),
      wallOf(6 * inch, 'toString', 'steel'),
    );
    expectRefused(/ASTM F480 has no such schedule/, wallOf(6 * inch, 'light', 'plastic'));
    expectRefused(/no ASME B36.10M size/, nominalOfOutside(0.19, 'steel', 0.002));
    expect(schedulesOf(7 * inch, 'steel')).toEqual([]);
    expect(outsideOfNominal(6 * inch + 0.0002, 'steel').ok).toBe(false);
  });

  it('find the nearest outside within the tolerance', () => {
    expect(figureOf(nominalOfOutside(0.1683, 'steel', 0.001)) / inch).toBeCloseTo(6, 9);
    expect(figureOf(nominalOfOutside(6.8 * inch, 'plastic', 0.3 * inch)) / inch).toBeCloseTo(6.25, 9);
    expect(figureOf(nominalOfOutside(6.7 * inch, 'plastic', 0.3 * inch)) / inch).toBeCloseTo(6, 9);
  });

  it('of plastic come in dimension ratios, thickest wall first', () => {
    expect(SDR_SERIES).toEqual([...SDR_SERIES].sort((a, b) => a - b));
    expect(SDR_SERIES).toEqual(expect.arrayContaining([17, 21, 26]));
  });
});

describe('collapse of steel', () => {
  const strength = 40_000 * PSI;

  it('is never above any of its limits, and falls with ovality', () => {
    fc.assert(
      fc.property(outside, ratio, fc.double({ min: 0, max: 0.05, noNaN: true }), (diameter, dr, ovality) => {
        const wall = diameter / dr;
        const least = figureOf(steelCollapse(diameter, wall, strength, ovality));
        expect(least).toBeGreaterThan(0);
        expect(least).toBeLessThanOrEqual(figureOf(elasticCollapse(diameter, wall)));
        expect(least).toBeLessThanOrEqual(figureOf(yieldCollapse(diameter, wall, strength)));
        expect(least).toBeLessThanOrEqual(figureOf(gradedCollapse(diameter, wall, strength)));
        const round = figureOf(ovalCollapse(diameter, wall, strength, 0));
        expect(figureOf(ovalCollapse(diameter, wall, strength, ovality))).toBeLessThanOrEqual(round * (1 + 1e-9));
      }),
    );
  });

  it('solves the equation of the oval tube', () => {
    const [diameter, wall, ovality] = [0.168, 0.0064, 0.02];
    const thin = figureOf(dimensionRatio(diameter, wall)) - 1;
    const elastic = figureOf(elasticCollapse(diameter, wall));
    const pressure = figureOf(ovalCollapse(diameter, wall, strength, ovality));
    const first = (2 * strength) / thin + (1 + 3 * thin * ovality) * elastic;
    expect((pressure ** 2 - first * pressure) / ((-2 * strength * elastic) / thin)).toBeCloseTo(1, 9);
  });

  it('has no jump where one range of D/t meets the next', () => {
    for (const yieldStrength of [40_000, 55_000, 80_000]) {
      let last = Number.POSITIVE_INFINITY;
      for (let dr = 8; dr < 60; dr += 0.01) {
        const pressure = figureOf(gradedCollapse(1, 1 / dr, yieldStrength * PSI)) / PSI;
        expect(pressure).toBeLessThan(last);
        if (Number.isFinite(last)) expect(last - pressure).toBeLessThan(0.01 * last);
        last = pressure;
      }
    }
  });

  it('is elastic and the same for every grade in thin pipe: 46,950,000 / (r (r − 1)²) psi (API 5C3, from memory)', () => {
    for (const grade of [40_000, 80_000]) {
      expect(figureOf(gradedCollapse(1, 1 / 60, grade * PSI)) / PSI).toBeCloseTo(46.95e6 / (60 * 59 ** 2), 6);
    }
  });

  it('is refused outside its range', () => {
    expectRefused(
      /30,000 to 160,000/,
      gradedCollapse(0.1, 0.005, 29_000 * PSI),
      gradedCollapse(0.1, 0.005, 161_000 * PSI),
    );
    expectRefused(/30,000 to 160,000/, steelCollapse(0.1, 0.005, 20_000 * PSI));
    expect(gradedCollapse(0.1, 0.005, 30_001 * PSI).ok).toBe(true);
    expect(gradedCollapse(0.1, 0.005, 159_999 * PSI).ok).toBe(true);
    expectRefused(/not above zero/, yieldCollapse(0.1, 0.005, 0), ovalCollapse(0.1, 0.005, 0, 0.01));
    expectRefused(/0 to 5 %/, ovalCollapse(0.1, 0.005, strength, -0.01), ovalCollapse(0.1, 0.005, strength, 0.051));
    expect(ovalCollapse(0.1, 0.005, strength, 0.05).ok).toBe(true);
    expectRefused(
      /no thickness/,
      elasticCollapse(0.1, 0),
      yieldCollapse(0.1, 0, strength),
      gradedCollapse(0.1, 0, strength),
      ovalCollapse(0.1, 0, strength, 0),
      steelCollapse(0.1, 0, strength),
    );
  });

  it('takes another modulus', () => {
    const usual = figureOf(elasticCollapse(0.1, 0.005));
    expect(figureOf(elasticCollapse(0.1, 0.005, 2 * 206_842_718_795)) / usual).toBeCloseTo(2, 9);
    expect(figureOf(elasticCollapse(0.1, 0.005, 206_842_718_795, 0)) / usual).toBeCloseTo(0.91, 9);
  });
});

describe('collapse of plastic', () => {
  it('falls as the wall thins, and with the modulus', () => {
    expect(figureOf(plasticCollapse(26))).toBeLessThan(figureOf(plasticCollapse(21)));
    expect(figureOf(plasticCollapse(21, 1e9, 0)) / ((2 * 1e9) / (21 * 20 ** 2))).toBeCloseTo(1, 12);
  });

  it('keeps all of its strength up to 73 °F and loses it in straight lines', () => {
    expect(figureOf(warmPvcShare(-5))).toBe(1);
    expect(figureOf(warmPvcShare(22))).toBe(1);
    expect(figureOf(warmPvcShare((85 - 32) / 1.8))).toBeCloseTo(0.815, 9);
    expect(figureOf(warmPvcShare((135 - 32) / 1.8))).toBeCloseTo(0.265, 9);
    expectRefused(/no rating/, warmPvcShare(61));
    expectRefused(/not a number/, warmPvcShare(Number.NaN));
  });

  it('never gains strength with heat', () => {
    let last = 1;
    for (let celsius = 0; celsius <= 60; celsius += 0.5) {
      const kept = figureOf(warmPvcShare(celsius));
      expect(kept).toBeLessThanOrEqual(last);
      last = kept;
    }
  });
});

describe('pressure of fluids', () => {
  it('adds up over columns, and is nothing between equal ones', () => {
    const columns = [
      { density: 1000, height: 10 },
      { density: 1900, height: 5 },
    ];
    expect(figureOf(hydrostaticPressure(columns))).toBeCloseTo(9.80665 * 19_500, 6);
    expect(figureOf(hydrostaticPressure([]))).toBe(0);
    expect(figureOf(pressureDifference(columns, columns))).toBe(0);
    expect(figureOf(pressureDifference([], columns))).toBeLessThan(0);
  });

  it('is refused below nothing', () => {
    const wrong = [{ density: -1, height: 1 }];
    expectRefused(/below zero/, hydrostaticPressure(wrong), hydrostaticPressure([{ density: 1, height: -1 }]));
    expectRefused(/below zero/, pressureDifference(wrong, []), pressureDifference([], wrong));
    expect(hydrostaticPressure([{ density: 0, height: 0 }]).ok).toBe(true);
  });
});

describe('weight of a string', () => {
  it('is its mass where there is no fluid, and floats by what it pushes aside', () => {
    fc.assert(
      fc.property(outside, ratio, fc.double({ min: 1000, max: 2000, noNaN: true }), (diameter, dr, fluid) => {
        const wall = diameter / dr;
        const mass = figureOf(pipeMass(diameter, wall));
        expect(figureOf(buoyedWeight(diameter, wall, 0, 0))).toBeCloseTo(mass, 9);
        // Full of the fluid that it stands in, only the steel is buoyed.
        const full = figureOf(buoyedWeight(diameter, wall, fluid, fluid));
        expect(full / (mass * (1 - fluid / 7850))).toBeCloseTo(1, 8);
        expect(full / figureOf(hoistLoad(mass, 1, 1, fluid))).toBeCloseTo(1, 8);
      }),
    );
  });

  it('takes the density of the pipe', () => {
    const plastic = figureOf(buoyedWeight(0.1143, 0.0044, 1000, 1000, 1000));
    expect(plastic).toBeCloseTo(0, 9);
    expect(figureOf(hoistLoad(10, 5, 5, 1000, 1000))).toBeCloseTo(0, 9);
  });

  it('on the hoist falls as the string goes into fluid', () => {
    expect(figureOf(hoistLoad(25, 100, 0, 1000))).toBeCloseTo(2500, 9);
    expect(figureOf(hoistLoad(25, 100, 40, 1000))).toBeCloseTo(2500 - (25 * 40 * 1000) / 7850, 9);
  });

  it('is refused where it cannot be', () => {
    expectRefused(/no thickness/, buoyedWeight(0.1, 0, 0, 0));
    expectRefused(/density is below/, buoyedWeight(0.1, 0.01, -1, 0), buoyedWeight(0.1, 0.01, 0, -1));
    expectRefused(/no mass or no length/, hoistLoad(0, 1, 0, 0), hoistLoad(1, 0, 0, 0));
    expectRefused(/not within the string/, hoistLoad(1, 1, 2, 0), hoistLoad(1, 1, -1, 0));
    expectRefused(/density is below/, hoistLoad(1, 1, 1, -1), hoistLoad(1, 1, 1, 1, 0));
  });
});
