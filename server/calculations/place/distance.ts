import type { Formula } from '../formula.ts';
import type { EarthPlace } from './utm.ts';

export const about: Formula = {
  name: 'distance between two places',
  text: 'd = 2 R asin √(sin²(Δφ/2) + cos φ₁ cos φ₂ sin²(Δλ/2)), R = 6,371,008.8 m; φ latitude, λ longitude',
  source: 'haversine formula; R is the mean radius of the GRS80 ellipsoid (Moritz, Geodetic Reference System 1980)',
  range: 'within 0.6 % of the distance on the ellipsoid',
  caution: null,
};

const meanRadius = 6_371_008.8;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The half of a circle's turn, squared sine. */
const haversine = (degrees: number): number => Math.sin(radians(degrees) / 2) ** 2;

/**
 * Distance in m between two places on one datum.
 *
 * Source: the haversine formula, on the mean radius of GRS80.
 * Worked example: one minute of latitude is 1,853 m (a nautical mile is 1,852 m).
 */
export function distanceBetween(a: EarthPlace, b: EarthPlace): number {
  const across = Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * haversine(b.longitude - a.longitude);
  return 2 * meanRadius * Math.asin(Math.min(1, Math.sqrt(haversine(b.latitude - a.latitude) + across)));
}
