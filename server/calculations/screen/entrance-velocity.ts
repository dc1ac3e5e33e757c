import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'entrance velocity of a screen',
  text: 'v = Q / (a L); Q rate, m³/s; a open area for each unit of length, m²/m; L length of screen, m; v m/s',
  source:
    'Davis, Water and Wastewater Engineering (2010), p. 4-38: 32 m³/h, 0.097 m²/m, 0.010 m/s, 9.16 m of screen; limit of 0.03 m/s usual',
  range: 'all above 0; open area as the maker gives it, none of it blocked',
  caution: null,
};

/**
 * Velocity of water through the openings of a screen, m/s. Rate in m³/s, open area in m² per m, length in m.
 *
 * v = Q / (a L). Source: Davis, *Water and Wastewater Engineering* (2010), p. 4-38.
 * Worked example: 32 m³/h through 9.16 m of 0.097 m²/m: 0.0100 m/s.
 */
export function entranceVelocity(rate: number, openArea: number, length: number): Outcome {
  if (!(rate > 0)) return refused('nothing was pumped');
  if (!(openArea > 0 && length > 0)) return refused('the screen has no open area');
  return known(rate / (openArea * length));
}

/** Length of screen for an entrance velocity, m: L = Q / (a v). Worked example: 32 m³/h, 0.097 m²/m, 0.010 m/s: 9.16 m. */
export function screenLength(rate: number, openArea: number, velocity: number): Outcome {
  if (!(rate > 0)) return refused('nothing was pumped');
  if (!(openArea > 0 && velocity > 0)) return refused('the open area or the velocity is not above zero');
  return known(rate / (openArea * velocity));
}

/** Open area for each unit of length, m²/m, of a screen with an open share of its surface: a = f π D. 0.1 of 168 mm: 0.0528. */
export function openAreaOf(outside: number, openShare: number): Outcome {
  if (!(outside > 0)) return refused('the outside diameter is not above zero');
  if (!(openShare > 0 && openShare < 1)) return refused('the open share is not between 0 and 1');
  return known(openShare * Math.PI * outside);
}
