import { type Formula, known, type Outcome } from '../formula.ts';
import { type FluidColumn, hydrostaticPressure } from './hydrostatic-pressure.ts';

export const about: Formula = {
  name: 'pressure difference on the casing under fluid grout',
  text: 'Δp = g ∑ ρo ho - g ∑ ρi hi at the shoe; o columns outside, i inside; Pa, positive pressing inward',
  source: 'hydrostatics; 100 ft of 15.6 lb/gal against water, 37.7 psi, derived',
  range: 'grout still fluid, pump pressure and surge not counted',
  caution:
    'Pump pressure and surge come on top. Keep the casing full, vent it, stand clear of the head, and follow the local code.',
};

/**
 * Outside less inside pressure at the shoe while grout is fluid, Pa; positive presses the casing in, negative bursts or
 * lifts it. Densities in kg/m³, heights in m above the shoe.
 *
 * Source: hydrostatics. Worked example: 100 ft of 15.6 lb/gal (1,869 kg/m³) outside, water inside: 37.7 psi = 260 kPa.
 */
export function pressureDifference(outside: readonly FluidColumn[], inside: readonly FluidColumn[]): Outcome {
  const pressing = hydrostaticPressure(outside);
  const holding = hydrostaticPressure(inside);
  if (!pressing.ok) return pressing;
  if (!holding.ok) return holding;
  return known(pressing.value - holding.value);
}
