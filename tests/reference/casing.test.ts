import { describe, expect, it } from 'vitest';
import {
  buoyedWeight,
  dimensionRatio,
  elasticCollapse,
  gradedCollapse,
  hydrostaticPressure,
  nominalOfOutside,
  outsideOfNominal,
  ovalCollapse,
  type PipeMaterial,
  pipeMass,
  plasticCollapse,
  pressureDifference,
  steelCollapse,
  wallOf,
  wallOfSdr,
  warmPvcShare,
  yieldCollapse,
} from '../../server/calculations/index.ts';
import { expectNear, figureOf, foot, inch, pound, poundPerGallon, psi } from './measures.ts';

const poundPerFoot = pound / foot;
const [outside, wall, grade35] = [6.625 * inch, 0.25 * inch, 35_000 * psi];

describe('outside diameters', () => {
  // ASME B36.10M and ASTM F480 as printed in state well rules.
  const published: [number, number][] = [
    [4, 4.5],
    [5, 5.563],
    [6, 6.625],
    [8, 8.625],
    [10, 10.75],
    [12, 12.75],
    [14, 14],
    [16, 16],
  ];
  const both: PipeMaterial[] = ['steel', 'plastic'];
  it.each(published)('%d in is %d in outside, of steel and of plastic', (nominal, diameter) => {
    for (const material of both) {
      expectNear(figureOf(outsideOfNominal(nominal * inch, material)) / inch, diameter, 1e-9);
      expectNear(figureOf(nominalOfOutside(diameter * inch, material, 0.001)) / inch, nominal, 1e-9);
    }
  });

  it('plastic also has 4½ in and 6¼ in casing, 4.950 and 6.900 in outside (ASTM F480, from memory)', () => {
    expectNear(figureOf(outsideOfNominal(4.5 * inch, 'plastic')) / inch, 4.95, 1e-9);
    expectNear(figureOf(outsideOfNominal(6.25 * inch, 'plastic')) / inch, 6.9, 1e-9);
  });
});

describe('mass of steel', () => {
  // Light well casing, ARM 36.21.640: wall, in, and weight, lb/ft; printed from 10.68 (D − t) t as below.
  it.each([
    [6, 0.25, 17.02],
    [8, 0.25, 22.36],
    [10, 0.25, 28.04],
    [12, 0.312, 41.45],
  ])('light %d in with %d in of wall weighs %d lb/ft', (nominal, thickness, weight) => {
    const light = figureOf(wallOf(nominal * inch, 'light', 'steel'));
    expectNear(light / inch, thickness, 1e-9);
    const mass = figureOf(pipeMass(figureOf(outsideOfNominal(nominal * inch, 'steel')), light));
    expectNear(mass / poundPerFoot, weight, 0.005 + 0.0012 * weight);
  });

  // Plain-end weights of ASTM A53-90b standard pipe, South Dakota ARSD 74:02:04:48, Table 2, lb/ft. They were printed
  // from 10.68 (D − t) t, where 0.02466 in metric units makes 10.69: 0.12 % apart.
  it.each([
    [1, 1.68],
    [1.25, 2.27],
    [1.5, 2.72],
    [2, 3.65],
    [2.5, 5.79],
    [3, 7.58],
    [3.5, 9.11],
    [4, 10.79],
    [5, 14.62],
    [6, 18.97],
    [8, 28.55],
    [10, 40.48],
    [12, 49.56],
  ])('standard %d in weighs %d lb/ft', (nominal, weight) => {
    const thickness = figureOf(wallOf(nominal * inch, 'std', 'steel'));
    const mass = figureOf(pipeMass(figureOf(outsideOfNominal(nominal * inch, 'steel')), thickness));
    expectNear(mass / poundPerFoot, weight, 0.005 + 0.0012 * weight);
  });

  it('6 in with 0.188 in of wall weighs 12.9 lb/ft (derived)', () => {
    expectNear(figureOf(pipeMass(outside, 0.188 * inch)) / poundPerFoot, 12.9, 0.05);
  });

  it('keeps to 0.02466 (D − t) t in mm', () => {
    expectNear(figureOf(pipeMass(0.1683, 0.0064)), 0.02466 * (168.3 - 6.4) * 6.4, 0.005);
  });
});

describe('collapse of steel', () => {
  it('6.625 × 0.250 in: 3,826 psi elastic, 2,542 psi by yield of 35 ksi (derived)', () => {
    expectNear(figureOf(elasticCollapse(outside, wall)) / psi, 3826, 0.5);
    expectNear(figureOf(yieldCollapse(outside, wall, grade35)) / psi, 2542, 0.5);
  });

  // Minimum collapse resistance, psi, of API 5C3 as printed in tubing and casing tables, from memory.
  it.each([
    [7, 0.317, 55, 3270],
    [7, 0.362, 55, 4320],
    [9.625, 0.352, 55, 2020],
    [9.625, 0.395, 80, 3090],
    [13.375, 0.38, 55, 1130],
    [5.5, 0.304, 55, 4910],
    [5.5, 0.304, 80, 6280],
  ])('%d in × %d in of %d ksi: %d psi', (diameter, thickness, ksi, published) => {
    const figure = figureOf(gradedCollapse(diameter * inch, thickness * inch, ksi * 1000 * psi)) / psi;
    expectNear(figure, published, 15);
  });

  it('a round pipe takes the lesser of elastic collapse and yield of a thin ring', () => {
    const ratio = figureOf(dimensionRatio(outside, wall));
    const ring = (2 * grade35) / (ratio - 1);
    expectNear(figureOf(ovalCollapse(outside, wall, grade35, 0)) / ring, 1, 1e-9);
  });

  it('is the least of its limits', () => {
    const least = figureOf(steelCollapse(outside, wall, grade35));
    expect(least).toBeCloseTo(figureOf(ovalCollapse(outside, wall, grade35, 0.01)), 3);
    expect(least).toBeLessThan(figureOf(gradedCollapse(outside, wall, grade35)));
  });
});

describe('collapse of plastic', () => {
  // RHCP of ASTM F480 with E 400,000 psi and ν 0.38; the formula from memory, the figures derived.
  it.each([
    [17, 215, 0.5],
    [21, 111, 0.5],
    [26, 57.5, 0.05],
  ])('SDR %d resists %d psi', (ratio, published, tolerance) => {
    expectNear(figureOf(plasticCollapse(ratio)) / psi, published, tolerance);
    expectNear(figureOf(wallOfSdr(4.5 * inch, ratio)), (4.5 * inch) / ratio, 1e-12);
  });

  it('keeps 0.62 of its strength at 100 °F and none is claimed above 140 °F (derating of PVC pipe, from memory)', () => {
    expectNear(figureOf(warmPvcShare((100 - 32) / 1.8)), 0.62, 1e-9);
    expectNear(figureOf(warmPvcShare(60)), 0.22, 1e-9);
    expect(warmPvcShare(60.1).ok).toBe(false);
  });
});

describe('casing under fluid grout', () => {
  const grout = 15.6 * poundPerGallon;

  it('100 ft of 15.6 lb/gal against water press with 37.7 psi (derived)', () => {
    const height = 100 * foot;
    const difference = pressureDifference([{ density: grout, height }], [{ density: 1000, height }]);
    expectNear(figureOf(difference) / psi, 37.7, 0.05);
  });

  it('a foot of fresh water presses with 0.433 psi (handbook figure, from memory)', () => {
    expectNear(figureOf(hydrostaticPressure([{ density: 1000, height: foot }])) / psi, 0.433, 0.0006);
  });

  it('6.625 × 0.250 in steel in 15.6 lb/gal: −10.9 lb/ft empty, +1.86 full of water (derived, steel at 17.02 lb/ft)', () => {
    // At 7850 kg/m³ the same pipe weighs 17.04 lb/ft, and both figures rise by 0.02.
    expectNear(figureOf(buoyedWeight(outside, wall, grout, 0)) / poundPerFoot, -10.9, 0.05);
    expectNear(figureOf(buoyedWeight(outside, wall, grout, 1000)) / poundPerFoot, 1.86, 0.02);
  });
});
