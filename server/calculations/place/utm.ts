import Utm, { LatLon } from 'geodesy/utm.js';
import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { zoneFits } from './utm-zone.ts';

export const about: Formula = {
  name: 'UTM and latitude, longitude',
  text: 'transverse Mercator to the sixth order, scale 0.9996 on the central meridian, false easting 500,000 m, false northing 10,000,000 m in the south',
  source: 'Karney 2011, as in the geodesy library; zones of DMA TM 8358.2',
  range: 'latitude from -80 to 84',
  caution: 'A place without its datum can be off by 100 m or more.',
};

export type Hemisphere = 'N' | 'S';
/** Datums whose ellipsoid is known here. NAD83 lies within about 2 m of WGS84. */
export type GridDatum = 'WGS84' | 'NAD83' | 'NAD27';

export interface GridPlace {
  readonly zone: number;
  readonly hemisphere: Hemisphere;
  /** m. */
  readonly easting: number;
  readonly northing: number;
}

export interface EarthPlace {
  /** Degrees, north and east positive. */
  readonly latitude: number;
  readonly longitude: number;
}

/**
 * UTM of a latitude and longitude, degrees, on the same datum; the zone is the longitude's own unless one is named.
 *
 * Valid from 80° S to 84° N. Source: Karney 2011.
 * Worked example: 43°38′33.24″ N, 79°23′13.7″ W: zone 17, 630,084 E, 4,833,438 N (published, from memory).
 */
export function utmOf(place: EarthPlace, datum: GridDatum = 'WGS84', zone: number | null = null): Outcome<GridPlace> {
  const { latitude, longitude } = place;
  if (!(latitude >= -80 && latitude <= 84)) return refused('UTM reaches from 80 degrees south to 84 degrees north');
  if (!(longitude >= -180 && longitude <= 180)) return refused('the longitude is outside -180 to 180 degrees');
  if (zone !== null && !isZone(zone)) return refused('UTM zones run from 1 to 60');
  if (zone !== null && !zoneFits(zone, longitude, latitude)) return refused('the longitude does not lie in that zone');
  const wrapped = longitude === 180 ? -180 : longitude;
  return attempt(() => {
    const utm = new LatLon(latitude, wrapped, 0, LatLon.datums[datum]).toUtm(zone ?? undefined);
    return { zone: utm.zone, hemisphere: utm.hemisphere, easting: utm.easting, northing: utm.northing };
  });
}

/**
 * Latitude and longitude, degrees, of a UTM place on the same datum.
 *
 * Source: Karney 2011. Worked example: zone 17 N, 630,084 E, 4,833,438 N: 43.6426, −79.3871.
 */
export function placeOfUtm(place: GridPlace, datum: GridDatum = 'WGS84'): Outcome<EarthPlace> {
  const { zone, hemisphere, easting, northing } = place;
  if (!isZone(zone)) return refused('UTM zones run from 1 to 60');
  if (!(easting >= 100_000 && easting <= 900_000)) return refused('a UTM easting lies between 100,000 and 900,000 m');
  if (!(northing >= 0 && northing <= 10_000_000)) return refused('a UTM northing lies between 0 and 10,000,000 m');
  return attempt(() => {
    const { lat, lon } = new Utm(zone, hemisphere, easting, northing, LatLon.datums[datum]).toLatLon();
    return { latitude: lat, longitude: lon };
  });
}

function isZone(zone: number): boolean {
  return Number.isInteger(zone) && zone >= 1 && zone <= 60;
}

/** The library throws on places that it cannot map. */
function attempt<T>(compute: () => T): Outcome<T> {
  try {
    return known(compute());
  } catch {
    return refused('the place lies outside the UTM grid');
  }
}
