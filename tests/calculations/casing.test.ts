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
  outsideOfNominal,
  ovalCollapse,
  type PipeMaterial,
  PSI,
  pipeGrade,
  pipeMass,
  plasticCollapse,
  pressureDifference,
  steelCollapse,
  wallOf,
  wallOfSdr,
  warmPlasticCollapse,
  warmPvcShare,
  widestGap,
  yieldCollapse,
} from '../../server/calculations/index.ts';
import { expectRefused, figureOf } from './outcomes.ts';

const inch = 0.0254;
const outside = fc.double({ min: 0.05, max: 1, noNaN: true });
const ratio = fc.double({ min: 8, max: 80, noNaN: true });

describe('joints', () => {
  it('are added up, and meet one time less than there are', () => {
    const tally = jointsTally([
      { count: 3, length: 6.1 },
      { count: 1, length: 1.55 },
    ]);
    expect(tally.total).toBeCloseTo(19.85, 12);
    expect(tally.connections).toBe(3);
    expect(jointsTally([])).toEqual({ total: 0, connections: 0 });
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
  // Inches, and the schedules that the standards print for them (from memory).
  const sizes: Record<PipeMaterial, Record<string, string>> = {
    steel: {
      '0.5': '40 80 std xs',
      '0.75': '40 80 std xs',
      1: '40 80 std xs',
      '1.25': '40 80 std xs',
      '1.5': '40 80 std xs',
      2: '10 40 80 std xs',
      '2.5': '10 40 80 std xs',
      3: '10 40 80 std xs',
      '3.5': '10 40 80 std xs',
      4: '10 40 80 120 std xs',
      5: '10 40 80 120 std xs',
      6: '10 40 80 120 std xs light',
      8: '10 20 30 40 60 80 120 std xs light',
      10: '10 20 30 40 60 80 120 std xs light',
      12: '10 20 30 40 60 80 120 std xs light',
      14: '10 20 30 40 60 80 std xs',
      16: '10 20 30 40 60 80 std xs',
      18: '10 20 30 40 60 80 std xs',
      20: '10 20 30 40 60 80 std xs',
      24: '10 20 30 40 60 80 std xs',
      30: '10 20 30 std xs',
      36: '10 20 30 std xs',
    },
    plastic: {
      1: '40 80',
      '1.25': '40 80',
      '1.5': '40 80',
      2: '40 80',
      '2.5': '40 80',
      3: '40 80',
      '3.5': '40 80',
      4: '40 80',
      '4.5': '',
      5: '40 80',
      6: '40 80',
      '6.25': '',
      8: '40 80',
      10: '40 80',
      12: '40 80',
      14: '40 80',
      16: '40 80',
    },
  };
  const metric = [15, 20, 25, 32, 40, 50, 65, 80, 90, 100, 125, 150, 200, 250, 300, 350, 400, 450, 500, 600, 750, 900];

  it.each(materials)('of %s lead from nominal to outside and back, and leave a bore in every schedule', (material) => {
    for (const [nominal, schedules] of Object.entries(sizes[material])) {
      const inches = Number(nominal) * inch;
      const diameter = figureOf(outsideOfNominal(inches, material));
      expect(figureOf(nominalOfOutside(diameter, material, 1e-6))).toBeCloseTo(inches, 9);
      for (const schedule of schedules.split(' ').filter(Boolean)) {
        expect(insideDiameter(diameter, figureOf(wallOf(inches, schedule, material))).ok).toBe(true);
      }
    }
  });

  it.each(materials)('of %s have thicker walls in higher schedules', (material) => {
    for (const [nominal, schedules] of Object.entries(sizes[material])) {
      const numbers = schedules.split(' ').filter((name) => /^\d+$/.test(name));
      const walls = numbers.map((name) => figureOf(wallOf(Number(nominal) * inch, name, material)));
      expect(walls).toEqual([...walls].sort((a, b) => a - b));
    }
  });

  it('go up from size to size, and are known by their metric names', () => {
    for (const material of materials) {
      const nominals = Object.keys(sizes[material]).map(Number);
      const outsides = nominals
        .sort((a, b) => a - b)
        .map((nominal) => figureOf(outsideOfNominal(nominal * inch, material)));
      expect(outsides).toEqual([...outsides].sort((a, b) => a - b));
    }
    expect(figureOf(outsideOfNominal(0.15, 'steel'))).toBeCloseTo(0.168275, 9);
    expect(figureOf(outsideOfNominal(0.1, 'plastic'))).toBeCloseTo(0.1143, 9);
    expect(metric.map((name) => outsideOfNominal(name / 1000, 'steel').ok)).not.toContain(false);
    expect(metric.slice(2, -5).map((name) => outsideOfNominal(name / 1000, 'plastic').ok)).not.toContain(false);
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
    expect(outsideOfNominal(6 * inch + 0.0002, 'steel').ok).toBe(false);
  });

  it('find the nearest outside within the tolerance', () => {
    expect(figureOf(nominalOfOutside(0.1683, 'steel', 0.001)) / inch).toBeCloseTo(6, 9);
    expect(figureOf(nominalOfOutside(6.8 * inch, 'plastic', 0.3 * inch)) / inch).toBeCloseTo(6.25, 9);
    expect(figureOf(nominalOfOutside(6.7 * inch, 'plastic', 0.3 * inch)) / inch).toBeCloseTo(6, 9);
  });
});

describe('grades of steel pipe', () => {
  const yields = (text: string): number => Math.round(figureOf(pipeGrade(text)).yieldStrength / PSI);

  // Least yield strengths in psi by the standards' own tables, from memory; grades J55, N80, P110 carry theirs in ksi.
  it.each([
    ['A53 B', 35_000],
    ['A53', 30_000],
    ['ASTM A-53, Gr. B', 35_000],
    ['a53b', 35_000],
    ['ASTM A53 grade B ERW', 35_000],
    ['B', 35_000],
    ['grade A', 30_000],
    ['SA53 B', 35_000],
    ['A106 C', 40_000],
    ['A139 grade E', 52_000],
    ['A252 3', 45_000],
    ['A252 Gr 2', 35_000],
    ['A500 B', 42_000],
    ['A500', 33_000],
    ['A53,B', 35_000],
    ['A53/B', 35_000],
    ['API-5L X42', 42_000],
    ['A53 - B', 35_000],
    ['X-42', 42_000],
    ['A589 B', 35_000],
    ['API 5L X42', 42_000],
    ['5L X-52', 52_000],
    ['X 70', 70_000],
    ['5L', 25_000],
    ['API 5L A25', 25_000],
    ['API 5L Gr. B', 35_000],
    ['J55', 55_000],
    ['API 5CT K-55', 55_000],
    ['N 80', 80_000],
    ['P110', 110_000],
    ['5CT', 40_000],
  ])('%s yields at %d psi', (text, psi) => expect(yields(text)).toBe(psi));

  it('are named by their standard', () => {
    expect(figureOf(pipeGrade('grade b')).name).toBe('ASTM A53 B');
    expect(figureOf(pipeGrade('X42')).name).toBe('API 5L X42');
    expect(figureOf(pipeGrade('A500')).name).toBe('ASTM A500, the lowest grade');
  });

  it('are refused where the table lacks them', () => {
    expectRefused(
      /not in the table/,
      ...[
        '',
        'grade',
        'Q7',
        'A53 Q',
        'A36',
        'X41',
        'A25',
        'API',
        'toString',
        'A53 B C',
        'XA53 B',
        'A53 SA53',
        'ASA53',
      ].map(pipeGrade),
    );
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

  // API 5C3's table of the D/t at which its formulas meet: yield to plastic, to transition, to elastic (from memory).
  it.each([
    [40_000, 16.4, 27.01, 42.64],
    [55_000, 14.81, 25.01, 37.21],
    [80_000, 13.38, 22.47, 31.02],
    [110_000, 12.44, 20.41, 26.22],
  ])('of %d psi changes its formula at D/t %d, %d and %d', (yieldPsi, plastic, transition, elastic) => {
    const at = (dr: number): number => figureOf(gradedCollapse(1, 1 / dr, yieldPsi * PSI)) / PSI;
    const byYield = (dr: number): number => (2 * yieldPsi * (dr - 1)) / dr ** 2;
    const byElastic = (dr: number): number => 46.95e6 / (dr * (dr - 1) ** 2);
    // Plastic and transition run straight in 1 / r: three points of one range lie on one line.
    const bend = (dr: number): number => {
      const [low, middle, high] = [1 / (dr + 0.1), 1 / dr, 1 / (dr - 0.1)];
      const share = (middle - low) / (high - low);
      return Math.abs(at(dr) - (at(dr + 0.1) + share * (at(dr - 0.1) - at(dr + 0.1)))) / at(dr);
    };
    expect(at(plastic - 0.03) / byYield(plastic - 0.03)).toBeCloseTo(1, 9);
    expect(Math.abs(at(plastic + 0.1) / byYield(plastic + 0.1) - 1)).toBeGreaterThan(1e-6);
    expect(at(elastic + 0.03) / byElastic(elastic + 0.03)).toBeCloseTo(1, 9);
    expect(Math.abs(at(elastic - 0.1) / byElastic(elastic - 0.1) - 1)).toBeGreaterThan(1e-6);
    expect(bend(transition - 0.2)).toBeLessThan(1e-9);
    expect(bend(transition + 0.2)).toBeLessThan(1e-9);
    expect(bend(transition)).toBeGreaterThan(1e-6);
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
    expectRefused(/no rating/, warmPvcShare(Number.NaN));
  });

  it('at 60 °C holds 0.22 of what it holds cool, and nothing is said beyond', () => {
    expect(figureOf(warmPlasticCollapse(21, 60)) / figureOf(plasticCollapse(21))).toBeCloseTo(0.22, 9);
    expect(figureOf(warmPlasticCollapse(21, 60)) / PSI).toBeCloseTo(24.4, 0);
    expectRefused(/no rating/, warmPlasticCollapse(21, 60.5));
    expectRefused(/no bore/, warmPlasticCollapse(2, 20));
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
