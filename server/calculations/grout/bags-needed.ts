import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'bags for a volume',
  text: 'n = V / Vb, rounded up to whole bags; V volume to fill, Vb volume that one bag makes, m³',
  source: 'division',
  range: 'Vb above 0',
  caution: null,
};

/** Less than this part of a bag is arithmetic noise, not a bag to carry. */
const NOISE = 1e-9;

/**
 * Whole bags for a volume. Both volumes in m³: the volume to fill, and the volume that one bag makes when mixed.
 *
 * Source: division. Worked example: 19.89 ft³ at 1.173 ft³ a sack: 16.96, 17 sacks; 22.88 ft³: 19.5, 20 sacks.
 */
export function bagsNeeded(volume: number, volumePerBag: number): Outcome {
  if (!(volume >= 0)) return refused('the volume is below zero');
  if (!(volumePerBag > 0)) return refused('a bag makes no volume');
  return known(Math.max(0, Math.ceil(volume / volumePerBag - NOISE)));
}
