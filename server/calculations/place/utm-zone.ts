import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'UTM zone of a longitude',
  text: 'zone = floor((λ + 180) / 6) + 1; λ longitude, degrees east; south-west Norway and Svalbard have zones of their own',
  source: 'DMA TM 8358.2, from memory',
  range: 'longitude from -180 to 180',
  caution: null,
};

/**
 * UTM zone of a longitude, degrees; 180° counts with zone 60's neighbour, zone 1.
 *
 * Without the exceptions of Norway and Svalbard. Source: DMA TM 8358.2, from memory.
 * Worked example: −78.3042: zone 17, central meridian −81.
 */
export function zoneOfLongitude(longitude: number): Outcome {
  if (!(longitude >= -180 && longitude <= 180)) return refused('the longitude is outside -180 to 180 degrees');
  return known((Math.floor((longitude + 180) / 6) % 60) + 1);
}

/** Central meridian of a zone, degrees: 6 z − 183. Zone 17: −81. */
export function centralMeridian(zone: number): Outcome {
  return Number.isInteger(zone) && zone >= 1 && zone <= 60
    ? known(6 * zone - 183)
    : refused('UTM zones run from 1 to 60');
}

/** Whether a zone is the longitude's own or touches it within half a degree, as wells near a zone's edge may be gridded. */
export function zoneFits(zone: number, longitude: number): boolean {
  const meridian = centralMeridian(zone);
  if (!meridian.ok) return false;
  const away = Math.abs(((((longitude - meridian.value) % 360) + 540) % 360) - 180);
  return away <= 3.5;
}
