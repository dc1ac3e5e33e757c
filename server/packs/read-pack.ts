import * as z from 'zod';
import { limitTable } from './limit-names.ts';
import { Pack } from './limits.ts';
import { JsonFault, type PlacedJson, readPlacedJson } from './placed-json.ts';

/** What is wrong in the text of a pack, and the offset at which it stands, in UTF-16 units from 0. */
export interface PackProblem {
  readonly message: string;
  readonly path: readonly string[];
  readonly offset: number;
}

export type ReadPack = { readonly pack: Pack } | { readonly problems: readonly PackProblem[] };

/** The known names that are near to a name, nearest first. */
export type Near = (name: string, known: readonly string[]) => readonly string[];

/** The ids that each place of a pack may name: terms of the notation, by the key under which they stand. */
export type Terms = Readonly<
  Partial<Record<'use' | 'method' | 'casing' | 'joint' | 'fill' | 'placement' | 'from', readonly string[]>>
>;

const nobody: Near = () => [];

type Issue = z.core.$ZodIssue;

const didYouMean = (names: readonly string[]): string =>
  names.length === 0 ? '' : `; did you mean ${names.join(' or ')}?`;

/** A schema without what only says that a value may be left out. */
function bare(schema: unknown): unknown {
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodNullable || schema instanceof z.ZodOptional)
    return bare(schema.unwrap());
  return schema;
}

function within(schema: unknown, key: string): unknown {
  const whole = bare(schema);
  if (whole instanceof z.ZodObject) return whole.shape[key];
  if (whole instanceof z.ZodArray) return whole.element;
  return whole instanceof z.ZodRecord ? whole.valueType : undefined;
}

/** The keys that the schema knows at a path. */
function keysAt(path: readonly string[]): readonly string[] {
  const schema = bare(path.reduce<unknown>(within, Pack));
  if (schema instanceof z.ZodObject) return Object.keys(schema.shape);
  return schema instanceof z.ZodRecord ? Object.keys(limitTable) : [];
}

const valueAt = (value: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((whole, key) => (whole as Readonly<Record<string, unknown>> | null | undefined)?.[key], value);

/** The offset of the nearest part that the text really has. */
function offsetOf({ offsets }: PlacedJson, path: readonly string[]): number {
  for (let length = path.length; length > 0; length--) {
    const found = offsets.get(`/${path.slice(0, length).join('/')}`);
    if (found !== undefined) return found;
  }
  return offsets.get('') ?? 0;
}

interface Fault {
  readonly path: readonly string[];
  readonly words: string;
}

function faultsOf(issue: Issue, { value }: PlacedJson, near: Near): Fault[] {
  const path = issue.path.map(String);
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: [...path, key],
      words: `there is no such key${didYouMean(near(key, keysAt(path)))}`,
    }));
  const written = valueAt(value, path);
  const known =
    issue.code === 'invalid_value' && typeof written === 'string' ? near(written, issue.values.map(String)) : [];
  return [{ path, words: `${issue.message}${didYouMean(known)}` }];
}

/** Limits whose value is not in the SI unit that it is compared in. */
function unitFaults({ limits, cases }: Pack): Fault[] {
  const of = (name: string, unit: string, path: readonly string[]): Fault[] => {
    const wanted = limitTable[name as keyof typeof limitTable].unit;
    return unit === wanted
      ? []
      : [{ path, words: `the value must be in ${wanted === '1' ? 'no unit, written "1"' : wanted}` }];
  };
  return [
    ...Object.entries(limits).flatMap(([name, { unit }]) => of(name, unit, ['limits', name, 'unit'])),
    ...cases.flatMap(({ limit, unit }, index) => of(limit, unit, ['cases', String(index), 'unit'])),
  ];
}

/** Names that are no term of the notation, so that nothing in a log could ever fit them. */
function termFaults({ cases, distances }: Pack, terms: Terms, near: Near): Fault[] {
  const of = (written: readonly unknown[], known: readonly string[] | undefined, path: readonly string[]): Fault[] =>
    written.flatMap((id, index) =>
      known === undefined || typeof id !== 'string' || known.includes(id)
        ? []
        : [{ path: [...path, String(index)], words: `the notation has no such term${didYouMean(near(id, known))}` }],
    );
  return [
    ...cases.flatMap(({ when }, index) =>
      Object.entries(when).flatMap(([key, wanted]) =>
        Array.isArray(wanted) ? of(wanted, terms[key as keyof Terms], ['cases', String(index), 'when', key]) : [],
      ),
    ),
    ...distances.flatMap(({ from }, index) => of(from, terms.from, ['distances', String(index), 'from'])),
  ];
}

const problemOf =
  (json: PlacedJson) =>
  ({ path, words }: Fault): PackProblem => ({
    path,
    offset: offsetOf(json, path),
    message: `not a rule pack${path.length > 0 ? ` at ${path.join('.')}` : ''}: ${words}`,
  });

/** An editor's own key, which says by what schema a file is completed. */
function withoutSchema(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const { $schema, ...rest } = value as Readonly<Record<string, unknown>>;
  return rest;
}

function packOf(json: PlacedJson, near: Near, terms: Terms): ReadPack {
  const result = Pack.safeParse(withoutSchema(json.value));
  const faults = result.success
    ? [...unitFaults(result.data), ...termFaults(result.data, terms, near)]
    : result.error.issues.flatMap((issue) => faultsOf(issue, json, near));
  if (result.success && faults.length === 0) return { pack: result.data };
  return { problems: faults.map(problemOf(json)) };
}

/**
 * Reads a pack from the text of a `.wellrules.json` file. Never throws; `near` finds names for what is misspelt, and
 * `terms` are the ids that it may name.
 */
export function readPack(text: string, near: Near = nobody, terms: Terms = {}): ReadPack {
  try {
    return packOf(readPlacedJson(text), near, terms);
  } catch (error) {
    if (!(error instanceof JsonFault)) throw error;
    return { problems: [{ message: `not JSON: ${error.message}`, path: [], offset: error.offset }] };
  }
}
