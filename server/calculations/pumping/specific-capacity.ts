import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'specific capacity',
  text: 'C = Q / s; Q pumping rate, m³/s; s drawdown, m; C m²/s',
  source: 'definition',
  range: 'Q and s above 0',
  caution: 'It falls with time and with rate: give the time and the rate with it.',
};

/**
 * Specific capacity, m²/s (m³/s per m of drawdown). Rate in m³/s, drawdown in m.
 *
 * Source: definition. Worked example: 40 L/min with 6.7 m of drawdown: 5.97 L/min per m = 0.0000995 m²/s.
 */
export function specificCapacity(rate: number, drawdown: number): Outcome {
  if (!(rate > 0)) return refused('nothing was pumped');
  if (!(drawdown > 0)) return refused('there is no drawdown');
  return known(rate / drawdown);
}
