import * as l10n from '@vscode/l10n';
import type * as z from 'zod';
import { type Fault, offsetOf, schemaFaults, withoutSchema } from '../packs/faults.ts';
import type { OwnPacks } from '../packs/own-packs.ts';
import { JsonFault, type PlacedJson, readPlacedJson } from '../packs/placed-json.ts';
import { nearNames } from '../rules/near-names.ts';
import { FolderSettings, noFolderSettings } from './folder-settings.ts';
import { packTrouble } from './own-packs.ts';

/** What is wrong in a file of the folder, and the offset at which it stands, in UTF-16 units from 0. */
export interface FileProblem {
  readonly offset: number;
  readonly message: string;
}

export interface ReadSettings {
  /** What can be used of the file: a part at fault counts as left out. */
  readonly settings: FolderSettings;
  readonly problems: readonly FileProblem[];
  /** False where the file does not say what it is meant to: no JSON, or of the wrong shape. */
  readonly usable: boolean;
}

/** A value without the part at a path. */
function without(value: unknown, [key, ...rest]: readonly string[]): unknown {
  if (typeof value !== 'object' || value === null || key === undefined) return value;
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return rest.length === 0
      ? items.filter((_, at) => String(at) !== key)
      : items.map((item, at) => (String(at) === key ? without(item, rest) : item));
  }
  const { [key]: part, ...others } = value as Readonly<Record<string, unknown>>;
  return rest.length === 0 ? others : { ...others, [key]: without(part, rest) };
}

/** Later items of a list first, so that taking one out moves no other that is still to come. */
const lastFirst = (faults: readonly Fault[]): Fault[] => [...faults].reverse();

/** The settings without their faulty parts; what is still at fault then counts as said by nobody. */
function rest(value: unknown, faults: readonly Fault[]): FolderSettings {
  const left = FolderSettings.safeParse(lastFirst(faults).reduce((whole, { path }) => without(whole, path), value));
  return left.success ? (left.data as FolderSettings) : noFolderSettings;
}

/** A fault of a name alone leaves the rest as it is meant; one of the shape does not. */
const isOfShape = (issue: z.core.$ZodIssue): boolean => issue.code === 'invalid_type' && issue.path.length < 2;

const problemOf =
  (json: PlacedJson) =>
  (fault: Fault): FileProblem => ({
    offset: offsetOf(json, fault),
    message: `${fault.path.length > 0 ? `${fault.path.join('.')}: ` : ''}${fault.words}`,
  });

const isList = (value: unknown): value is { readonly packs: readonly unknown[] } =>
  typeof value === 'object' && value !== null && 'packs' in value && Array.isArray(value.packs);

function packFault(id: unknown, at: number, own: OwnPacks): Fault[] {
  if (typeof id !== 'string') return [];
  const words = packTrouble(id, own);
  return words === null ? [] : [{ path: ['packs', String(at)], words }];
}

/** Packs that are named and cannot be had. */
const packFaults = (value: unknown, own: OwnPacks): Fault[] =>
  isList(value) ? value.packs.flatMap((id, at) => packFault(id, at, own)) : [];

function settingsOf(json: PlacedJson, own: OwnPacks): ReadSettings {
  const value = withoutSchema(json.value);
  const parsed = FolderSettings.safeParse(value);
  const faults = parsed.success ? [] : schemaFaults(parsed.error, value, FolderSettings, nearNames);
  return {
    settings: parsed.success ? (parsed.data as FolderSettings) : rest(value, faults),
    problems: [...faults, ...packFaults(value, own)].map(problemOf(json)),
    usable: parsed.success || !parsed.error.issues.some(isOfShape),
  };
}

/** Reads the text of a `drillhand.json`. `own` are the packs of the workspace that it may name. Never throws. */
export function readFolderSettings(text: string, own: OwnPacks): ReadSettings {
  try {
    return settingsOf(readPlacedJson(text), own);
  } catch (error) {
    if (!(error instanceof JsonFault)) throw error;
    const problem = { offset: error.offset, message: l10n.t('not JSON: {0}', error.message) };
    return { settings: noFolderSettings, problems: [problem], usable: false };
  }
}
