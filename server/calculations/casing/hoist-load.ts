import { STEEL_DENSITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'hoist load of a string',
  text: 'W = m (L - Lf ρf / ρp); m mass of pipe, kg/m; L length, Lf length in fluid, m; ρf fluid, ρp pipe, kg/m³; W kg as a scale reads it',
  source: 'Archimedes, open-ended string',
  range: 'Lf not more than L',
  caution:
    'Dead weight only. Friction, a stuck string, tackle and shock come on top: stay within the rated load of the weakest part of the hoist.',
};

/**
 * Weight that an open-ended string hangs on the hoist with, kg as a scale reads it. Mass in kg/m, lengths in m, densities
 * in kg/m³. In air: submerged length 0.
 *
 * W = m (L − Lf ρf/ρp). Source: Archimedes.
 * Worked example: 100 m of 25.35 kg/m: 2,535 kg in air; all of it in water: 2,212 kg.
 */
export function hoistLoad(
  massPerLength: number,
  length: number,
  submerged: number,
  fluidDensity: number,
  pipeDensity: number = STEEL_DENSITY,
): Outcome {
  if (!(massPerLength > 0 && length > 0)) return refused('the string has no mass or no length');
  if (!(submerged >= 0 && submerged <= length)) return refused('the length in fluid is not within the string');
  if (!(fluidDensity >= 0 && pipeDensity > 0)) return refused('a density is below zero');
  return known(massPerLength * (length - (submerged * fluidDensity) / pipeDensity));
}
