import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { wellFunction } from './well-function.ts';

export const about: Formula = {
  name: 'drawdown by Theis',
  text: 's = Q W(u) / (4 π T), u = r² S / (4 T t); Q rate, m³/s; T transmissivity, m²/s; S storage coefficient; r distance, m; t time, s; s m',
  source: 'Theis 1935',
  range: 'confined aquifer without end, steady rate, Q, T, S, r and t above 0',
  caution: null,
};

/**
 * Drawdown at a distance from a well pumped at a steady rate, m. Rate in m³/s, T in m²/s, distance in m, time in s.
 *
 * s = Q W(u) / (4πT), u = r²S/(4Tt). Source: Theis 1935.
 * Worked example: 788 m³/d, T 385 m²/d, S 0.00017, r 30 m, 10 min: u 0.0143, W 3.684, s 0.600 m.
 */
export function theisDrawdown(
  rate: number,
  transmissivity: number,
  storativity: number,
  distance: number,
  time: number,
): Outcome {
  if (!(rate > 0 && transmissivity > 0 && storativity > 0 && distance > 0 && time > 0)) {
    return refused('rate, transmissivity, storage coefficient, distance and time must be above zero');
  }
  const well = wellFunction((distance ** 2 * storativity) / (4 * transmissivity * time));
  return well.ok ? known((rate * well.value) / (4 * Math.PI * transmissivity)) : well;
}
