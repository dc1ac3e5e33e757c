import { STEEL_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { annulusArea } from '../geometry/annulus-area.ts';
import { insideDiameter } from './inside-diameter.ts';
import { pipeMass } from './pipe-mass.ts';

export const about: Formula = {
  name: 'buoyed weight of a plugged string',
  text: 'w = m + π/4 (ρi d² - ρo D²); m mass of pipe, kg/m; ρi, ρo density of the fluid inside and outside, kg/m³; d inside, D outside diameter, m; w kg/m as a scale reads it, below 0 floats',
  source: 'Archimedes; 6.625 x 0.250 in steel in 15.6 lb/gal grout, -10.9 lb/ft empty, +1.86 full of water, derived',
  range: 'the end closed, the fluids at rest',
  caution: 'A string lighter than the grout around it rises: fill it, or hold it down, before the grout goes in.',
};

/**
 * Weight of a string with a closed end that stands in one fluid and holds another, kg/m as a scale reads it; below zero
 * it floats. Diameter and wall in m, densities in kg/m³; inside density 0 for an empty string.
 *
 * w = m + π/4 (ρi d² − ρo D²). Source: Archimedes.
 * Worked example: 6.625 × 0.250 in steel in 15.6 lb/gal grout: −10.9 lb/ft empty, +1.86 lb/ft full of water.
 */
export function buoyedWeight(
  outside: number,
  wall: number,
  outsideFluid: number,
  insideFluid: number,
  pipeDensity: number = STEEL_DENSITY,
): Outcome {
  const mass = pipeMass(outside, wall, pipeDensity);
  const inside = insideDiameter(outside, wall);
  if (!mass.ok) return mass;
  if (!inside.ok) return inside;
  if (!(outsideFluid >= 0 && insideFluid >= 0)) return refused('a density is below zero');
  return known(mass.value + fluidMass(inside.value, insideFluid) - fluidMass(outside, outsideFluid));
}

function fluidMass(diameter: number, density: number): number {
  const area = annulusArea(diameter, 0);
  return area.ok ? area.value * density : 0;
}
