import type { Span } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { TextField, WellLog } from '../model/log.ts';

/** Something by which a person looks for a well. */
export interface WellSymbol {
  readonly kind: 'well' | 'place' | 'person' | 'number' | 'formation';
  readonly name: string;
  readonly span: Span;
}

const kinds: readonly (readonly [string, WellSymbol['kind']])[] = [
  ['well', 'well'],
  ['site', 'place'],
  ['location', 'place'],
  ['owner', 'person'],
  ['contractor', 'person'],
  ['tag', 'number'],
  ['permit', 'number'],
];

const isSaid = ({ text }: TextField): boolean => !/^[\s?]*$/.test(text);

function headSymbols({ header }: WellLog): readonly WellSymbol[] {
  return kinds.flatMap(([keyword, kind]) => {
    const field = Object.hasOwn(header, keyword) ? header[keyword] : undefined;
    return field === undefined || !isSaid(field) ? [] : [{ kind, name: field.text, span: field.span }];
  });
}

/** The names of formations, each where it is met first. */
function formationSymbols({ strata }: WellLog): readonly WellSymbol[] {
  const met = new Map<string, WellSymbol>();
  for (const { names, descriptionSpan, span } of strata)
    for (const name of names)
      if (!met.has(name.toLowerCase()))
        met.set(name.toLowerCase(), { kind: 'formation', name, span: descriptionSpan ?? span });
  return [...met.values()];
}

/** What a log is looked for by: its well's id, place, people, numbers, and the formations that it met. */
export const wellSymbols = ({ log }: Snapshot): readonly WellSymbol[] => [
  ...headSymbols(log),
  ...formationSymbols(log),
];

/** True where the letters of the query stand in the name in their order, whatever stands between. */
export function matches(name: string, query: string): boolean {
  const letters = name.toLowerCase();
  let at = 0;
  for (const letter of query.toLowerCase().replace(/\s+/g, '')) {
    at = letters.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}
