import { termText } from '../../drawing/words.ts';
import type { Record as WellRecord } from '../../record/record.ts';
import { figureValue } from '../figure-value.ts';
import { isNearWgs84, pointOf } from './point.ts';

/** A feature of GeoJSON (RFC 7946): a point, or no geometry where the log gives no place on or near WGS 84. */
export interface WellFeature {
  readonly type: 'Feature';
  /** The well's id; left out where the log has none. */
  readonly id?: string;
  readonly geometry: { readonly type: 'Point'; readonly coordinates: readonly number[] } | null;
  readonly properties: Readonly<Record<string, string | number | null>>;
}

const metres = (value: number | null): number | null => (value === null ? null : Number(value.toFixed(3)) + 0);

function geometryOf(record: WellRecord): WellFeature['geometry'] {
  const latitude = figureValue(record, 'place.latitude');
  const longitude = figureValue(record, 'place.longitude');
  if (latitude === null || longitude === null || !isNearWgs84(record.log.place?.datum ?? null)) return null;
  return pointOf(latitude, longitude);
}

/** The well as a feature; lengths in metres, rates in litres a second, levels below ground, what is unknown null. */
export function wellFeature(record: WellRecord): WellFeature {
  const { log } = record;
  const rate = figureValue(record, 'water.found-rate');
  return {
    type: 'Feature',
    ...(log.header.well && { id: log.header.well.text }),
    geometry: geometryOf(record),
    properties: {
      well: log.header.well?.text ?? null,
      site: log.header.site?.text ?? null,
      location: log.header.location?.text ?? null,
      owner: log.header.owner?.text ?? null,
      contractor: log.header.contractor?.text ?? null,
      tag: log.header.tag?.text ?? null,
      use: log.uses.map(termText).join('; ') || null,
      status: termText(log.status) || null,
      finished: log.finished?.date ?? null,
      datum: log.place?.datum?.name ?? null,
      place_accuracy_m: metres(log.place?.accuracy?.value ?? null),
      ground_elevation_m: metres(log.ground?.elevation?.value ?? null),
      ground_datum: log.ground?.datum?.name ?? null,
      depth_m: metres(log.totalDepth),
      strings: log.strings.length,
      static_level_m: metres(figureValue(record, 'water.static-level')),
      rate_found_L_per_s: metres(rate === null ? null : rate * 1000),
    },
  };
}

/** What a point of GeoJSON cannot say of this place: it is on WGS 84 by RFC 7946, section 4. */
export function placeLeft({ log }: WellRecord): string[] {
  if (log.place === null) return ['The log gives no place: the feature has no geometry.'];
  const { datum } = log.place;
  if (datum === null) return ['The log names no datum: the place stands as if it were on WGS 84.'];
  if (!isNearWgs84(datum))
    return [`GeoJSON is on WGS 84 and ${datum.name} is far from it: the feature has no geometry.`];
  return datum.id === 'wgs84'
    ? []
    : [`GeoJSON is on WGS 84; the place is on ${datum.name} and was not moved, which can differ by about 2 m.`];
}
