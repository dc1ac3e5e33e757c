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

/**
 * Whether a zone may be used for a place, degrees: its own zone, one that it touches within half a degree (wells near a
 * zone's edge may be gridded with their neighbours), or one of the wide zones of Norway and Svalbard.
 *
 * Source: DMA TM 8358.2, from memory; the half degree is the usual overlap. Worked example: 17 for −78.3042: true; 18: true,
 * for zone 18 begins at −78; 16: false.
 */
export function zoneFits(zone: number, longitude: number, latitude: number): boolean {
  const meridian = centralMeridian(zone);
  if (!meridian.ok) return false;
  const away = Math.abs(((((longitude - meridian.value) % 360) + 540) % 360) - 180);
  return away <= HALF_ZONE + OVERLAP || isWideZone(zone, longitude, latitude);
}

const HALF_ZONE = 3;
const OVERLAP = 0.5;

function isWideZone(zone: number, longitude: number, latitude: number): boolean {
  if (zone === 32 && latitude >= 56 && latitude < 64) return longitude >= 3 && longitude < 12;
  if (latitude < 72 || longitude < 0 || longitude >= 42) return false;
  return [31, 33, 35, 37].includes(zone) && Math.abs(longitude - (6 * zone - 183)) <= 2 * HALF_ZONE;
}
