export { exportFormat, exportFormats } from './formats.ts';
export { readRecord } from './json/read-record.ts';
export { recordJson } from './json/record-json.ts';
export { recordSchema } from './json/schema.ts';
export { recordHtml } from './record-html.ts';
export { recordText } from './record-text.ts';
