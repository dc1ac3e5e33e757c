import { isNearWgs84, pointOf } from '../../export/geojson/point.ts';
import type { WellSummary } from '../../folder/summary.ts';
import { factsJson } from './formats.ts';
import type { Listed } from './listed.ts';

type Place = NonNullable<WellSummary['place']>;

const isOnWgs84 = ({ datum }: Place): boolean => isNearWgs84(datum);

const featureOf = (well: Listed) => {
  const { place } = well.summary;
  return {
    type: 'Feature',
    ...(well.summary.id !== null && { id: well.summary.id }),
    geometry: place !== null && isOnWgs84(place) ? pointOf(place.latitude, place.longitude) : null,
    properties: { ...factsJson(well), datum: place?.datum?.name ?? null },
  };
};

/** Wells as a collection of features by RFC 7946: longitude and latitude on WGS 84, or no geometry. */
export const listGeojson = (wells: readonly Listed[]): string =>
  `${JSON.stringify({ type: 'FeatureCollection', features: wells.map(featureOf) }, null, 2)}\n`;

/** What GeoJSON could not carry of the places, one sentence each. */
export function placesLeft(wells: readonly Listed[]): string[] {
  const places = wells.map(({ summary }) => summary.place);
  const count = (fits: (place: Place | null) => boolean): number => places.filter(fits).length;
  const said = (number: number, words: string): string[] =>
    number === 0 ? [] : [`${number} of ${places.length} wells ${words}`];
  return [
    ...said(
      count((place) => place === null),
      'have no place and go in without geometry',
    ),
    ...said(
      count((place) => place !== null && !isOnWgs84(place)),
      'are on a datum far from WGS 84 and go in without geometry',
    ),
    ...said(
      count((place) => place !== null && isOnWgs84(place) && place.datum?.id !== 'wgs84'),
      'are on a datum near WGS 84, or on one that is not named, and were not moved: up to about 2 m, more where no datum is named',
    ),
  ];
}
