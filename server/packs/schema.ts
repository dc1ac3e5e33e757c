import * as z from 'zod';
import { limitNames, limitTable } from './limit-names.ts';
import { Limit, Pack } from './limits.ts';

type Schema = z.core.JSONSchema.BaseSchema;

const input = { io: 'input' } as const;

/** Each limit by its name, with what it means and the unit that its value must have. */
function limitProperties(): Schema {
  const { $schema, ...limit } = z.toJSONSchema(Limit, input);
  const of = (name: (typeof limitNames)[number]): Schema => {
    const { unit, meaning } = limitTable[name];
    return {
      ...limit,
      description: `${meaning}, in ${unit === '1' ? 'no unit' : unit}`,
      properties: { ...limit.properties, unit: { type: 'string', const: unit } },
    };
  };
  return {
    type: 'object',
    properties: Object.fromEntries(limitNames.map((name) => [name, of(name)])),
    additionalProperties: false,
  };
}

/** The JSON Schema (draft 2020-12) of a pack, by which an editor completes and checks one. */
export function packSchema(): Schema {
  const { $schema, ...pack } = z.toJSONSchema(Pack, input);
  return {
    ...($schema === undefined ? {} : { $schema }),
    title: 'Drillhand rule pack',
    ...pack,
    properties: { $schema: { type: 'string' }, ...pack.properties, limits: limitProperties() },
  };
}
