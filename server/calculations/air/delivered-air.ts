import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'air delivered by a compressor',
  text: 'Q = Qr (1 - k); Qr rated volume, m³/s; k share lost to wear, up to 0.15',
  source: 'delivered air up to 15 % below rating: published in the trade, general pack',
  range: 'k from 0 up to 1',
  caution: null,
};

/**
 * Volume of free air that a compressor delivers, m³/s, less than its rating by a share.
 *
 * Source: trade practice, up to 15 %. Worked example: 21 m³/min rated, 15 %: 17.85 m³/min.
 */
export function deliveredAir(rated: number, lost: number): Outcome {
  if (!(rated > 0)) return refused('the rated volume is not above zero');
  if (!(lost >= 0 && lost < 1)) return refused('the share lost is not within 0 to 1');
  return known(rated * (1 - lost));
}

/**
 * The flow at sea level that weighs as much as this flow at altitude, m³/s: Q ρ/ρ0. Use it against ranges that were
 * written for sea level, and only once. Worked example: 0.35 m³/s at a density ratio of 0.822: 0.288 m³/s.
 */
export function seaLevelFlow(flow: number, densityRatio: number): Outcome {
  if (!(flow > 0)) return refused('there is no flow');
  if (!(densityRatio > 0)) return refused('the density ratio is not above zero');
  return known(flow * densityRatio);
}
