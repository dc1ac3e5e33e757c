import { STANDARD_GRAVITY } from '../constants.ts';
import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'pressure under columns of fluid',
  text: 'p = g ∑ ρ h; ρ density, kg/m³; h height of each column, m; g 9.80665 m/s²; p Pa above the air',
  source: 'hydrostatics; g of NIST SP 811',
  range: 'fluid at rest, not set; ρ and h not below 0',
  caution: null,
};

/** A column of one fluid: density in kg/m³, height in m. */
export interface FluidColumn {
  readonly density: number;
  readonly height: number;
}

/**
 * Pressure under columns of fluid that stand one on another, Pa above the air: p = g ∑ ρ h.
 *
 * Source: hydrostatics. Worked example: 100 ft of fresh water: 298.9 kPa = 43.35 psi.
 */
export function hydrostaticPressure(columns: readonly FluidColumn[]): Outcome {
  if (columns.some(({ density, height }) => !(density >= 0 && height >= 0))) {
    return refused('a density or a height is below zero');
  }
  return known(columns.reduce((sum, { density, height }) => sum + STANDARD_GRAVITY * density * height, 0));
}
