import type { Place } from '../model/log.ts';
import { listed, numberText, wordText } from './words.ts';

/* A ten-millionth of a degree is a centimetre on the ground. */
const degreesText = (degrees: number | null): string =>
  degrees !== null && Number.isFinite(degrees) ? `${Number(degrees.toFixed(7))}°` : '?';

const gridText = ({ utm }: Place): string =>
  utm === null
    ? '?'
    : `UTM ${utm.zone}${utm.hemisphere} ${numberText(utm.easting, 0)} E ${numberText(utm.northing, 0)} N`;

/** A place as it was written, with its datum; empty where there is none. */
export function coordinatesText(place: Place | null): string {
  if (place === null) return '';
  const { latitude, longitude } = place;
  const text = latitude === null ? gridText(place) : `${degreesText(latitude)}, ${degreesText(longitude)}`;
  return listed([`${text}${place.doubtful ? ' (doubtful)' : ''}`, wordText(place.datum)]);
}
