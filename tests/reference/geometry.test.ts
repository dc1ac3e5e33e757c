import { describe, expect, it } from 'vitest';
import { annulusArea, annulusVolume, filledTop, meanDiameterFilled } from '../../server/calculations/index.ts';
import { cubicFoot, expectNear, figureOf, foot, gallon, inch } from './measures.ts';

describe('annulus of round hole and round string', () => {
  // Derived here from A = π/4 (D² − d²), printed to the digits of a handbook table.
  const rows = [
    { hole: 10, string: 6.625, cubicFeet: 0.306, gallons: 2.289, litres: 28.43 },
    { hole: 8.75, string: 6.625, cubicFeet: 0.1782, gallons: 1.333, litres: 16.56 },
    { hole: 6, string: 4.5, cubicFeet: 0.0859, gallons: 0.643, litres: 7.98 },
  ];
  it.each(rows)('$hole in around $string in', ({ hole, string, cubicFeet, gallons, litres }) => {
    const area = figureOf(annulusArea(hole * inch, string * inch));
    expectNear(area / foot ** 2, cubicFeet, 0.00006);
    expectNear((area * foot) / gallon, gallons, 0.0006);
    expectNear(area * 1000, litres, 0.006);
  });

  it('keeps to the US forms 0.0054542 and 0.0408 (D² − d²)', () => {
    const area = figureOf(annulusArea(2 * inch, 1 * inch));
    expectNear(area / foot ** 2, 0.0054542 * 3, 1e-6);
    expectNear((area * foot) / gallon, 0.0408 * 3, 1e-4);
  });
});

describe('water in an open hole', () => {
  // MIL-HDBK-1164, Table 1, US gallons for each foot, by inches of diameter.
  // The same table prints 148.88 for 60 in, a misprint: 60² times the factor of its other rows gives 146.88.
  const table: [number, number][] = [
    [4, 0.65],
    [6, 1.47],
    [8, 2.61],
    [10, 4.08],
    [12, 5.88],
    [16, 10.44],
    [24, 23.5],
    [36, 52.88],
    [60, 146.88],
  ];
  it.each(table)('%d in holds %d US gal/ft', (diameter, gallons) => {
    expectNear((figureOf(annulusArea(diameter * inch, 0)) * foot) / gallon, gallons, 0.011);
  });

  it('does not agree with the misprint for 60 in', () => {
    expect((figureOf(annulusArea(60 * inch, 0)) * foot) / gallon).toBeLessThan(147);
  });
});

describe('a worked annulus', () => {
  // Derived here: 10 in hole, 6.625 in casing, 65 ft: 19.89 ft³ = 148.8 US gal.
  const [outer, inner, bottom] = [10 * inch, 6.625 * inch, 65 * foot];
  const volume = figureOf(annulusVolume(outer, inner, bottom));
  const pieces = [{ top: 0, bottom, outer, inner, volume }];

  it('holds 19.89 ft³, 148.8 US gal', () => {
    expectNear(volume / cubicFoot, 19.89, 0.005);
    expectNear(volume / gallon, 148.8, 0.05);
  });

  it('is filled to its top by its own volume, and says 10 in from it', () => {
    expectNear(figureOf(filledTop(volume, pieces)).top, 0, 1e-9);
    expectNear(figureOf(meanDiameterFilled(volume, pieces)) / inch, 10, 1e-9);
  });
});
