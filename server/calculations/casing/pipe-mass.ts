import { STEEL_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome } from '../formula.ts';
import { insideDiameter } from './inside-diameter.ts';

export const about: Formula = {
  name: 'mass of pipe for each unit of length',
  text: 'm = π ρ t (D - t); D outside diameter, t wall, m; ρ density, 7850 kg/m³ for steel; m kg/m. In mm and for steel, 0.02466 (D - t) t',
  source: 'ASME B36.10M, plain-end mass; 6.625 x 0.250 in, 17.02 lb/ft, in ARM 36.21.640',
  range: 't above 0 and less than D / 2',
  caution: null,
};

/**
 * Mass of plain-end pipe, kg/m: m = π ρ t (D − t). Diameter and wall in m, density in kg/m³.
 *
 * Couplings and welds are not in it. Source: ASME B36.10M, whose form for steel in mm is 0.02466 (D − t) t.
 * Worked example: 6.625 in × 0.250 in steel: 25.35 kg/m = 17.03 lb/ft (17.02 published).
 */
export function pipeMass(outside: number, wall: number, density: number = STEEL_DENSITY): Outcome {
  const inside = insideDiameter(outside, wall);
  return inside.ok ? known(Math.PI * density * wall * (outside - wall)) : inside;
}
