import { didYouMean, type Fault, type Near, offsetOf, schemaFaults, withoutSchema } from './faults.ts';
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

/** The ids that each place of a pack may name: terms of the notation, by the key under which they stand. */
export type Terms = Readonly<
  Partial<Record<'use' | 'method' | 'casing' | 'joint' | 'fill' | 'placement' | 'from', readonly string[]>>
>;

const nobody: Near = () => [];

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
  (fault: Fault): PackProblem => ({
    path: fault.path,
    offset: offsetOf(json, fault),
    message: `not a rule pack${fault.path.length > 0 ? ` at ${fault.path.join('.')}` : ''}: ${fault.words}`,
  });

function packOf(json: PlacedJson, near: Near, terms: Terms): ReadPack {
  const result = Pack.safeParse(withoutSchema(json.value));
  const faults = result.success
    ? [...unitFaults(result.data), ...termFaults(result.data, terms, near)]
    : schemaFaults(result.error, json.value, Pack, near);
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
