import { parseText } from '../../../grammar/index.ts';
import { type Row, rowById, type Slot, table } from '../../../grammar/table.ts';
import { termLists } from '../../../grammar/terms/index.ts';
import type { ListId } from '../../../grammar/terms/term.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { quantityText, valueText } from '../../../grammar/write.ts';
import { packs } from '../../../server/packs/index.ts';

/** YAML as it is written by hand: maps, lists, and pairs of readings on one line. */
export type Yaml = string | readonly Yaml[] | { readonly [key: string]: Yaml };
interface Map {
  [key: string]: Yaml;
}

const textOf = (item: Item, line: Line): string => valueText(item.value, line.text).replace(/ {2}/g, ', ');

/** The ground's words by the list that they are from, so that each can be chosen from an enumeration. */
function groundOf(item: Item): Map {
  if (item.value.kind !== 'description') return {};
  const [material = '', ...rest] = item.value.long.split(', ');
  const out: Map = { material };
  for (const part of rest) {
    const key = /^(?:some|with|trace|little|and|occasional)\b/.test(part) ? 'with' : keyOfGround(part);
    const held = out[key];
    out[key] = held === undefined ? part : [...(Array.isArray(held) ? held : [held as string]), part];
  }
  return out;
}

const namesIn = (list: ListId): readonly string[] =>
  termLists.find(({ id }) => id === list)?.terms.map(({ name }) => name) ?? [];

const keyOfGround = (part: string): string => {
  const word = part.split(' ').at(-1) ?? part;
  if (namesIn('colour').includes(word)) return 'colour';
  if (namesIn('moisture').includes(part)) return 'moisture';
  return namesIn('consistency').includes(part) ? 'consistency' : 'quality';
};

function depthsOf(line: Line): Map {
  const { depths, text } = line;
  if (depths === null) return {};
  if (depths.kind === 'quantity') return { at: quantityText(depths, text) };
  const from: Map = depths.from === null ? {} : { from: quantityText(depths.from, text) };
  return { ...from, to: quantityText(depths.to, text) };
}

/** What one line says, a property for each item. */
function propertiesOf(line: Line): Map {
  const out: Map = depthsOf(line);
  for (const item of line.items) {
    if (item.value.kind === 'description') Object.assign(out, groundOf(item));
    else {
      const label = item.label?.term ? `${item.label.term.name} ` : '';
      const held = out[item.slot];
      const text = label + textOf(item, line);
      out[item.slot] = held === undefined ? text : [...(Array.isArray(held) ? held : [held as string]), text];
    }
  }
  return { ...asPutIn(rowById(line.row ?? ''), out), ...(line.remark !== null && { remark: line.remark.text }) };
}

/** First what YAML's server puts in by itself, in its order, so that it need not be moved. */
const asPutIn = (row: Row, says: Map): Map => {
  const first = requiredOf(row).flatMap((key) => (says[key] === undefined ? [] : [[key, says[key]] as const]));
  return { ...Object.fromEntries(first), ...says };
};

const onlyValue = (map: Map): Yaml => {
  const values = Object.values(map);
  return values.length === 1 && typeof values[0] === 'string' ? values[0] : map;
};

const listed = (map: Map, key: string, value: Yaml): void => {
  const held = map[key];
  map[key] = [...(Array.isArray(held) ? held : []), value];
};

const lists = new Set(['casing', 'liner', 'test', 'hole', 'strata']);
/** Lines of the head of which a log may have several. */
const severalInHead = new Set(['shift', 'existing', 'photo']);

/** The same facts as a document of YAML: a key for each line of the head, a list for each section. */
export function yamlOf(text: string): Map {
  const root: Map = {};
  let open: Map = root;
  for (const line of parseText(text).lines) {
    if (line.row === null) continue;
    const row = rowById(line.row);
    const says = propertiesOf(line);
    if (row.where === 'section') {
      open = { ...says };
      const isEmpty = Object.keys(says).length === 0;
      if (row.id === 'hole' || row.id === 'strata') root[row.id] = isEmpty ? [] : [says];
      else if (lists.has(row.id)) listed(root, row.id, open);
      else root[row.id] = open;
    } else if (row.where === 'depth-line') {
      const section = row.of[0] ?? '';
      if (section === 'hole' || section === 'strata') listed(root, section, says);
      else if (section === 'test') listed(open, 'recovery' in open ? 'recovery' : 'readings', pairOf(says));
      else listed(open, 'lines', says);
    } else if (row.id === 'recovery') open.recovery = [];
    else if (row.where === 'under')
      open[row.id] = repeats(row) ? [...((open[row.id] as Yaml[]) ?? []), says] : onlyValue(says);
    else if (row.body === 'words') root[row.id] = Object.values(says).flat().join(' ');
    else if (severalInHead.has(row.id)) listed(root, row.id, says);
    else if (root[row.id] === undefined) root[row.id] = onlyValue(says);
    else throw new Error(`a second line of ${row.id} would take the place of the first`);
  }
  return root;
}

const repeats = ({ id }: Row): boolean => ['grout', 'seal', 'pack', 'screen', 'plug'].includes(id);
const pairOf = (says: Map): Yaml => [says.elapsed ?? '', says.level ?? says.drawdown ?? ''];

const plain = (text: string): string =>
  /^[+\-?"'[{#&*!|>%@`~]|: | #|^$/.test(text) && !/^-\d/.test(text) ? `'${text}'` : text;

const isPair = (value: Yaml): value is readonly string[] =>
  Array.isArray(value) && value.every((each) => typeof each === 'string');

const scalar = (value: Yaml): string => (isPair(value) ? `[${value.map(plain).join(', ')}]` : plain(value as string));

/** The lines of a document, two blanks a level. */
export function yamlLines(value: Map, indent = ''): string[] {
  return Object.entries(value).flatMap(([key, each]) => {
    if (typeof each === 'string' || isPair(each)) return [`${indent}${key}: ${scalar(each)}`];
    if (Array.isArray(each)) return [`${indent}${key}:`, ...each.flatMap((one) => itemLines(one, `${indent}  `))];
    return [`${indent}${key}:`, ...yamlLines(each as Map, `${indent}  `)];
  });
}

function itemLines(value: Yaml, indent: string): string[] {
  if (typeof value === 'string' || isPair(value)) return [`${indent}- ${scalar(value)}`];
  const [first = '', ...rest] = yamlLines(value as Map, `${indent}  `);
  return [`${indent}- ${first.trimStart()}`, ...rest];
}

const textual = { type: ['string', 'number'] };
/* A name that stands in two lists stands here once: a schema that says it twice is none, and YAML's server offers nothing. */
const oneOf = (names: readonly string[]) => ({ anyOf: [{ enum: [...new Set(names)] }, textual] });

function schemaOfSlot({ accepts, doc, many }: Slot): object {
  const names = accepts.flatMap((each) => (each.kind === 'terms' ? each.lists.flatMap(namesIn) : []));
  const one = names.length > 0 ? oneOf(names) : textual;
  return { description: doc, ...(many ? { anyOf: [one, { type: 'array', items: one }] } : one) };
}

const several = (one: object): object => ({ anyOf: [one, { type: 'array', items: one }] });

/** Materials with their adjectives that the samples name, so that they too can be chosen. */
const sampleMaterials = ['silty clay', 'sand and gravel', 'clay till', 'silty sand', 'sandy gravel', 'sandy silt'];

const ground = {
  material: oneOf([...namesIn('material'), ...sampleMaterials]),
  colour: several(oneOf(namesIn('colour').flatMap((colour) => [colour, `dark ${colour}`, `light ${colour}`]))),
  moisture: several(oneOf(namesIn('moisture'))),
  consistency: several(oneOf(namesIn('consistency'))),
  quality: several(
    oneOf(
      ['fracturing', 'weathering', 'structure', 'content', 'grain-size'].flatMap((list) => namesIn(list as ListId)),
    ),
  ),
  with: several(textual),
};

function propertiesFor(row: Row): Record<string, object> {
  const depths: Record<string, object> = row.depths === 'none' ? {} : { at: textual, from: textual, to: textual };
  const slots = row.slots.filter(({ slot }) => slot !== 'description').map((slot) => [slot.slot, schemaOfSlot(slot)]);
  return { ...depths, ...(row.id === 'strata.line' ? ground : {}), ...Object.fromEntries(slots), remark: textual };
}

/** What YAML's server puts in by itself with an object: of a line of depths nothing, since it may go on at the base above. */
function requiredOf({ depths, slots, where }: Row): readonly string[] {
  if (where === 'depth-line') return [];
  const ends = depths === 'interval' ? ['from', 'to'] : [];
  return [...ends, ...slots.flatMap(({ slot, expected }) => (expected ? [slot] : []))];
}

const objectFor = (row: Row, more: Record<string, object> = {}): object => ({
  type: 'object',
  description: row.doc,
  properties: { ...propertiesFor(row), ...more },
  required: requiredOf(row),
  additionalProperties: false,
});

const place = {
  ...Object.fromEntries(['latitude', 'longitude', 'zone', 'easting', 'northing'].map((name) => [name, textual])),
  datum: oneOf(namesIn('geodetic-datum')),
  accuracy: textual,
};

function schemaOfRow(row: Row): object {
  if (row.id === 'place') return { type: 'object', description: row.doc, properties: place };
  if (row.id === 'rules') return { description: row.doc, ...oneOf(packs.map(({ id }) => id)) };
  if (row.body !== 'items') return { ...textual, description: row.doc };
  const under = table.filter(({ of, where }) => where === 'under' && of.includes(row.id));
  const hung = Object.fromEntries(under.map((each) => [each.id, hungSchema(each)]));
  if (severalInHead.has(row.id)) return { type: 'array', description: row.doc, items: objectFor(row) };
  if (row.where !== 'section') return { description: row.doc, anyOf: [textual, objectFor(row)] };
  const lines = row.lines === null ? null : rowById(row.lines);
  if (row.id === 'hole' || row.id === 'strata')
    return { type: 'array', description: row.doc, items: objectFor(lines as Row) };
  const pairs = { type: 'array', items: { type: 'array', items: textual } };
  const readings: Record<string, object> =
    row.id === 'test'
      ? { readings: pairs, recovery: pairs }
      : lines === null
        ? {}
        : { lines: { type: 'array', items: objectFor(lines) } };
  const own = objectFor(row, { ...hung, ...readings });
  return lists.has(row.id) ? { type: 'array', description: row.doc, items: own } : own;
}

const hungSchema = (row: Row): object =>
  repeats(row)
    ? { type: 'array', items: objectFor(row) }
    : { anyOf: [textual, { type: 'array', items: textual }, objectFor(row)] };

/** The schema of such documents, made from the one table of the notation: a property for each row and each item, with its terms. */
export const yamlSchema = (): object => ({
  $schema: 'http://json-schema.org/draft-07/schema#',
  type: 'object',
  properties: Object.fromEntries(
    table.filter(({ where }) => where !== 'under' && where !== 'depth-line').map((row) => [row.id, schemaOfRow(row)]),
  ),
  additionalProperties: false,
});
