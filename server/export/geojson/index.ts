import type { Record as WellRecord } from '../../record/record.ts';
import type { Exported, ExportFormat } from '../format.ts';
import { placeLeft, wellFeature } from './feature.ts';

/** Wells as one collection of features, as text. */
export const geojsonText = (records: readonly WellRecord[]): string =>
  `${JSON.stringify({ type: 'FeatureCollection', features: records.map(wellFeature) }, null, 2)}\n`;

const makeGeojson: ExportFormat['make'] = (record, { name }): Exported => ({
  files: [{ name: `${name}.geojson`, content: geojsonText([record]) }],
  left: [...placeLeft(record), 'Of construction and geology GeoJSON carries only depth and number of strings.'],
});

export const geojsonFormat: ExportFormat = {
  id: 'geojson',
  title: 'Place (GeoJSON)',
  extension: 'geojson',
  many: false,
  make: makeGeojson,
};
