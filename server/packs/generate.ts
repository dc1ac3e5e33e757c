import { packSchema } from './schema.ts';

/** The published JSON Schema of a pack. */
export function generated(): { path: string; text: string }[] {
  return [{ path: 'server/packs/pack.schema.generated.json', text: `${JSON.stringify(packSchema(), null, 2)}\n` }];
}
