export { recordHtml } from './record-html.ts';
export { recordJson } from './record-json.ts';
export { recordText } from './record-text.ts';
export { recordSchema, recordSchemaJson } from './schema.ts';
