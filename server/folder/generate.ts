import { settingsSchema } from './schema.ts';

/** The published JSON Schema of a `drillhand.json`. */
export function generated(): { path: string; text: string }[] {
  const text = `${JSON.stringify(settingsSchema(), null, 2)}\n`;
  return [{ path: 'server/folder/settings.schema.generated.json', text }];
}
