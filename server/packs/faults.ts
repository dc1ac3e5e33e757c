import * as z from 'zod';
import type { PlacedJson } from './placed-json.ts';

/** The known names that are near to a name, nearest first. */
export type Near = (name: string, known: readonly string[]) => readonly string[];

/** What is wrong at a path of a JSON text. */
export interface Fault {
  readonly path: readonly string[];
  readonly words: string;
  /** True where the name at the end of the path is at fault, and not what stands under it. */
  readonly ofName?: boolean;
}

type Issue = z.core.$ZodIssue;

/** `; did you mean x or y?`, or nothing. */
export const didYouMean = (names: readonly string[]): string =>
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
function keysAt(whole: z.ZodType, path: readonly string[]): readonly string[] {
  const schema = bare(path.reduce<unknown>(within, whole));
  if (schema instanceof z.ZodObject) return Object.keys(schema.shape);
  return schema instanceof z.ZodRecord && schema.keyType instanceof z.ZodEnum ? schema.keyType.options.map(String) : [];
}

const valueAt = (value: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((whole, key) => (whole as Readonly<Record<string, unknown>> | null | undefined)?.[key], value);

function faultsOf(issue: Issue, value: unknown, schema: z.ZodType, near: Near): Fault[] {
  const path = issue.path.map(String);
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: [...path, key],
      words: `there is no such key${didYouMean(near(key, keysAt(schema, path)))}`,
      ofName: true,
    }));
  const written = valueAt(value, path);
  const known =
    issue.code === 'invalid_value' && typeof written === 'string' ? near(written, issue.values.map(String)) : [];
  return [{ path, words: `${issue.message}${didYouMean(known)}` }];
}

/** What a schema has against a value, each with the names that may have been meant. */
export const schemaFaults = (error: z.ZodError, value: unknown, schema: z.ZodType, near: Near): readonly Fault[] =>
  error.issues.flatMap((issue) => faultsOf(issue, value, schema, near));

/** Where a fault stands: at the nearest part of its path that the text really has. */
export function offsetOf({ offsets, names }: PlacedJson, { path, ofName = false }: Fault): number {
  const name = ofName ? names.get(`/${path.join('/')}`) : undefined;
  if (name !== undefined) return name;
  for (let length = path.length; length > 0; length--) {
    const found = offsets.get(`/${path.slice(0, length).join('/')}`);
    if (found !== undefined) return found;
  }
  return offsets.get('') ?? 0;
}

/** A value without an editor's own key, which says by what schema a file is completed. */
export function withoutSchema(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const { $schema, ...rest } = value as Readonly<Record<string, unknown>>;
  return rest;
}
