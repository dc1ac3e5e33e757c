import { recordSchema } from '../../export/index.ts';
import { settingsSchema } from '../../folder/schema.ts';
import { packSchema } from '../../packs/schema.ts';
import { nearNames } from '../../rules/near-names.ts';
import { didYouMean } from '../arguments.ts';
import type { Arguments, Command } from '../command.ts';
import { type Exit, exit } from '../exit.ts';
import { Unusable } from '../unusable.ts';
import type { World } from '../world.ts';

const schemas = { record: recordSchema, pack: packSchema, settings: settingsSchema } as const;

const names = Object.keys(schemas);

const isName = (name: string): name is keyof typeof schemas => Object.hasOwn(schemas, name);

function nameFrom([name, more]: readonly string[]): keyof typeof schemas {
  if (name === undefined) throw new Unusable(`name a schema: ${names.join(', ')}`);
  if (more !== undefined) throw new Unusable(`one schema at a time; "${more}" is one too many`);
  if (isName(name)) return name;
  throw new Unusable(
    `there is no schema "${name}"${didYouMean(nearNames(name, names)) || `; known are ${names.join(', ')}`}`,
  );
}

/** A JSON Schema (draft 2020-12) as text. */
const schemaText = (name: keyof typeof schemas): string => `${JSON.stringify(schemas[name](), null, 2)}\n`;

async function run(given: Arguments, world: World): Promise<Exit> {
  world.print(schemaText(nameFrom(given.positionals)));
  return exit.clean;
}

export const schema: Command = {
  name: 'schema',
  usage: 'drillhand schema record|pack|settings',
  summary: 'Print the JSON Schema of a record, of a rule pack or of a drillhand.json.',
  options: [],
  notes: [],
  run,
};
