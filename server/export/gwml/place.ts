import type { Record as WellRecord } from '../../record/record.ts';
import { figureValue } from '../figure-value.ts';
import { node, type XmlNode } from './node.ts';

/* Geographic reference systems, latitude first, by the terms of the notation; numbers of the EPSG register, from memory. */
const epsg: Readonly<Record<string, number>> = {
  wgs84: 4326,
  nad83: 4269,
  'nad83-csrs': 4617,
  nad27: 4267,
  etrs89: 4258,
  gda94: 4283,
  gda2020: 7844,
};

/** The reference system of the place; null where its datum is not named or has no number here. */
export function systemOf({ log }: WellRecord): string | null {
  const id = log.place?.datum?.id;
  const number = id !== undefined && Object.hasOwn(epsg, id) ? epsg[id] : undefined;
  return number === undefined ? null : `http://www.opengis.net/def/crs/EPSG/0/${number}`;
}

/** A point, or null where the log gives no place. */
export function pointOf(record: WellRecord, id: string): XmlNode | null {
  const latitude = figureValue(record, 'place.latitude');
  const longitude = figureValue(record, 'place.longitude');
  if (latitude === null || longitude === null) return null;
  const system = systemOf(record);
  const place = [latitude, longitude].map((degrees) => String(Number(degrees.toFixed(7)) + 0)).join(' ');
  return node(
    'gml:Point',
    { 'gml:id': id, srsDimension: '2', ...(system === null ? {} : { srsName: system }) },
    node('gml:pos', {}, place),
  );
}

/** The ground's elevation as a property of that name. */
export function elevationNode({ log }: WellRecord, name: string): XmlNode | null {
  const elevation = log.ground?.elevation?.value ?? null;
  if (elevation === null) return null;
  const datum = log.ground?.datum?.name;
  const labels = { uomLabels: 'm', ...(datum ? { axisLabels: datum.replace(/\s+/g, '-') } : {}) };
  return node(name, { srsDimension: '1', ...labels }, String(elevation));
}
