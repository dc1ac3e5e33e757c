import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'air at altitude',
  text: 'T = 288.15 - 0.0065 H; p = 101325 (T / 288.15)^5.25588; ρ = p / (287.053 T); H height above sea level, m; T K, p Pa, ρ kg/m³',
  source: 'U.S. Standard Atmosphere 1976 (ISO 2533), constants from memory',
  range: 'from -1,000 to 11,000 m',
  caution: 'The compressor takes in the same volume everywhere; its air weighs less up here. Correct once, not twice.',
};

export interface Air {
  /** K. */
  readonly temperature: number;
  /** Pa. */
  readonly pressure: number;
  /** kg/m³. */
  readonly density: number;
  /** Density over that at sea level, no unit. */
  readonly densityRatio: number;
}

const SEA_LEVEL = { temperature: 288.15, pressure: 101_325, density: 1.225 };
const LAPSE = 0.0065;
const GAS_CONSTANT = 287.053;
const EXPONENT = 5.25588;
const LOWEST = -1000;
const HIGHEST = 11_000;

/**
 * Temperature, pressure and density of standard air at a height above sea level, m.
 *
 * Valid from −1,000 to 11,000 m. Source: U.S. Standard Atmosphere 1976.
 * Worked example: 2,000 m: 275.15 K, 79,495 Pa, 1.0065 kg/m³, 0.822 of sea level.
 */
export function standardAtmosphere(height: number): Outcome<Air> {
  if (!(height >= LOWEST && height <= HIGHEST)) return refused('the height is outside -1,000 to 11,000 m');
  const temperature = SEA_LEVEL.temperature - LAPSE * height;
  const pressure = SEA_LEVEL.pressure * (temperature / SEA_LEVEL.temperature) ** EXPONENT;
  const density = pressure / (GAS_CONSTANT * temperature);
  return known({ temperature, pressure, density, densityRatio: density / SEA_LEVEL.density });
}
