import * as z from 'zod';
import { packs } from '../packs/index.ts';
import { FolderSettings } from './folder-settings.ts';
import { ruleLevels, settableRules } from './rule-choices.ts';

type Schema = z.core.JSONSchema.BaseSchema;

/** Every rule by its id, with what it looks for. */
const ruleProperties = (): Schema => ({
  type: 'object',
  description:
    'How strongly a rule speaks, by its id: error, warning, information, hint, on (as strongly as it does by itself) or off.',
  properties: Object.fromEntries(
    settableRules.map(({ id, title, off, severity }) => [
      id,
      { enum: [...ruleLevels], description: title, default: off ? 'off' : severity },
    ]),
  ),
  additionalProperties: false,
});

/** Ids of the packs that come with the program are offered; those of the workspace are let pass. */
const packList = (): Schema => ({
  type: 'array',
  description:
    'Rule packs to check every log below this folder against, beside those that the log names. A pack is a help for checking, not the law.',
  items: { anyOf: [{ enum: packs.map(({ id }) => id) }, { type: 'string' }] },
  uniqueItems: true,
});

/** The JSON Schema (draft 2020-12) of a `drillhand.json`, by which an editor completes and checks one. */
export function settingsSchema(): Schema {
  const { $schema, type, additionalProperties } = z.toJSONSchema(FolderSettings, { io: 'input' });
  return {
    ...($schema === undefined ? {} : { $schema }),
    title: 'Drillhand settings of a folder',
    ...(type === undefined ? {} : { type }),
    properties: { $schema: { type: 'string' }, packs: packList(), rules: ruleProperties() },
    ...(additionalProperties === undefined ? {} : { additionalProperties }),
  };
}
