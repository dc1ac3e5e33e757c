import type { JSONSchema } from 'vscode-json-languageservice';
import { termLists } from '../../grammar/terms/index.ts';
import type { ListId } from '../../grammar/terms/term.ts';
import { vocabulary } from './logs.ts';

/** The names of the trade's terms, as the notation knows them. */
const namesIn = (...lists: readonly ListId[]): string[] =>
  termLists.filter(({ id }) => lists.includes(id)).flatMap(({ terms }) => terms.map(({ name }) => name));

const oneOf = (...names: readonly string[]): JSONSchema => ({ type: 'string', enum: [...new Set(names)] });

const materials = oneOf(...namesIn('material'), ...vocabulary.materials);
const colours = oneOf(...namesIn('colour'));
const amounts = oneOf(...namesIn('amount'));
const qualities = oneOf(
  ...namesIn('consistency', 'moisture', 'grain-size', 'grain-shape', 'sorting', 'fracturing', 'weathering'),
  ...namesIn('structure', 'content'),
);

const number = (minimum: number, maximum: number): JSONSchema => ({ type: 'number', minimum, maximum });
const depth = number(0, 50_000);
const depthOrAbove = number(-3, 50_000);
const text: JSONSchema = { type: 'string' };
const date: JSONSchema = { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}$' };
const listOf = (items: JSONSchema): JSONSchema => ({ type: 'array', items });

const object = (properties: { readonly [name: string]: JSONSchema }, required: readonly string[]): JSONSchema => ({
  type: 'object',
  properties,
  required: [...required],
  additionalProperties: false,
});

const layer = object(
  {
    top: depth,
    bottom: depth,
    material: materials,
    colour: colours,
    qualities: listOf(qualities),
    with: listOf(object({ material: materials, amount: amounts }, ['material', 'amount'])),
    remark: text,
  },
  ['top', 'bottom', 'material'],
);

const hole = object(
  { top: depth, bottom: depth, diameter: number(30, 2500), method: oneOf(...namesIn('hole-method')) },
  ['top', 'bottom', 'diameter'],
);

const grout = object(
  {
    top: depth,
    bottom: depth,
    material: oneOf(...namesIn('fill-material')),
    volume: number(0.001, 1000),
    bags: object({ count: number(1, 1000), mass: number(1, 2000) }, ['count', 'mass']),
    waterCement: number(0.2, 1.5),
    placement: oneOf(...namesIn('placement')),
    placed: date,
  },
  ['top', 'bottom', 'material', 'volume'],
);

const casing = object(
  {
    top: depthOrAbove,
    bottom: depth,
    material: oneOf(...namesIn('casing-material')),
    outside: number(15, 2000),
    wall: number(0.5, 50),
    joint: oneOf(...namesIn('joint-type')),
    shoe: depth,
    centralizers: listOf(depth),
    joints: listOf(number(0.1, 20)),
    grout: listOf(grout),
  },
  ['top', 'bottom', 'material', 'outside'],
);

/**
 * The record as a JSON Schema: required parts, enumerations of the trade's terms, ranges. What compares two places (a
 * base below its top, layers that meet, grout against its annulus) no schema can say, and is not asked of the services.
 */
export const recordSchema: JSONSchema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  ...object(
    {
      well: text,
      units: object({ depth: oneOf('m', 'ft'), diameter: oneOf('mm', 'in') }, ['depth', 'diameter']),
      owner: text,
      began: date,
      finished: date,
      hole: listOf(hole),
      strata: listOf(layer),
      casing: listOf(casing),
    },
    ['well', 'units', 'hole', 'strata'],
  ),
};
