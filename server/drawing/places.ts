import type { Record as WellRecord } from '../record/record.ts';
import { wellName } from './title.ts';

/** A well of several, with what to call it where it gives no name of its own. */
export interface NamedWell {
  readonly record: WellRecord;
  /** Name of its log. */
  readonly file: string;
}

/** A place on a plane, m east and m north of a point among the wells. */
export interface PlanePlace {
  readonly east: number;
  readonly north: number;
}

export interface PlacedWell extends NamedWell, PlanePlace {}

export const nameOf = ({ record, file }: NamedWell): string =>
  record.log.header.well?.text ? wellName(record.log.header) : file;

/* Mean radius of the GRS80 ellipsoid (Moritz, Geodetic Reference System 1980), m. */
const meanRadius = 6_371_008.8;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

interface Degrees {
  readonly latitude: number;
  readonly longitude: number;
}

/** Latitude and longitude as the record has them, reckoned from a UTM place too; null where there are none. */
function degreesOf({ figures }: WellRecord): Degrees | null {
  const figureOf = (id: string): number => figures.find((figure) => figure.id === id)?.value ?? Number.NaN;
  const [latitude, longitude] = [figureOf('place.latitude'), figureOf('place.longitude')];
  return Math.abs(latitude) < 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
}

const halfTurn = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;

/**
 * The wells on one plane about the first of them: degrees times the mean radius, east shortened by the cosine of the
 * latitude. Good to 1 % over some tens of kilometres.
 */
export function placedWells(wells: readonly NamedWell[]): { placed: PlacedWell[]; unplaced: NamedWell[] } {
  const known = wells.map((well) => ({ well, degrees: degreesOf(well.record) }));
  const origin = known.find(({ degrees }) => degrees !== null)?.degrees ?? null;
  const placed = known.flatMap(({ well, degrees }) => {
    if (degrees === null || origin === null) return [];
    const north = meanRadius * radians(degrees.latitude - origin.latitude);
    const east =
      meanRadius * Math.cos(radians(origin.latitude)) * radians(halfTurn(degrees.longitude - origin.longitude));
    return [{ ...well, east, north }];
  });
  return { placed, unplaced: known.flatMap(({ well, degrees }) => (degrees === null ? [well] : [])) };
}

export const apart = (a: PlanePlace, b: PlanePlace): number => Math.hypot(a.east - b.east, a.north - b.north);
