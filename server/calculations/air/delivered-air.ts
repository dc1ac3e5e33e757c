import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'air delivered, as at sea level',
  text: 'Q = Qr (1 - k) ρ / ρ0; Qr rated volume, m³/s; k share lost to wear; ρ / ρ0 density of the air at the site over that at sea level; Q m³/s of sea-level air that weighs as much',
  source:
    'delivered air up to 15 % below rating: published in the trade; density once, for the volume taken in is the same everywhere',
  range: 'Qr above 0, k from 0 up to 1, ρ / ρ0 above 0',
  caution: null,
};

/**
 * Sea-level air that weighs as much as what a compressor delivers, m³/s: its rated volume less a share lost to wear, and
 * thinned by altitude, once. Use it against ranges that were written for sea level.
 *
 * Source: trade practice, up to 15 %. Worked example: 21 m³/min rated, 15 % lost, density ratio 0.822: 14.67 m³/min.
 */
export function deliveredAir(rated: number, lost: number, densityRatio: number): Outcome {
  if (!(rated > 0)) return refused('the rated volume is not above zero');
  if (!(lost >= 0 && lost < 1)) return refused('the share lost is not within 0 to 1');
  if (!(densityRatio > 0)) return refused('the density ratio is not above zero');
  return known(rated * (1 - lost) * densityRatio);
}
