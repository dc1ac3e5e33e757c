import { csvFormat } from './csv/index.ts';
import { fileFormats } from './files/index.ts';
import type { ExportFormat } from './format.ts';
import { geojsonFormat } from './geojson/index.ts';
import { gwmlFormat } from './gwml/index.ts';
import { jsonFormat } from './json/record-json.ts';
import { lasFormat } from './las/index.ts';

/** Every way of writing a record for others. */
export const exportFormats: readonly ExportFormat[] = [
  jsonFormat,
  csvFormat,
  gwmlFormat,
  lasFormat,
  geojsonFormat,
  ...fileFormats,
];

/** The format of that id, or null. */
export const exportFormat = (id: string): ExportFormat | null =>
  exportFormats.find((format) => format.id === id) ?? null;
