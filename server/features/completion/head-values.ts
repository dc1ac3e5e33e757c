import * as l10n from '@vscode/l10n';
import type { Row } from '../../../grammar/table.ts';
import type { Line } from '../../../grammar/tree.ts';
import type { CompletionPlace } from './place.ts';
import { plain, type SuggestionSource } from './suggestion.ts';

/** What the logs of one crew say alike: all that stands on such a line, or of a place in words what stands last. */
const alike: Readonly<Record<string, 'whole' | 'last'>> = {
  owner: 'whole',
  contractor: 'whole',
  technician: 'whole',
  licence: 'whole',
  location: 'last',
};

const marker = 'head:';

/** What a line of the head says that another log may say again, as a key to count it by; none of other lines. */
export function headKeysOf(line: Line): readonly string[] {
  const kind = line.row === null ? undefined : alike[line.row];
  if (kind === undefined || line.keyword === null) return [];
  const said = line.text.slice(line.keyword.end).trim();
  const value = kind === 'whole' ? said : (said.split(',').at(-1) ?? '').trim();
  return value === '' || value === '?' ? [] : [`${marker}${line.row}/${value}`];
}

/** What is typed so far of a value, and where it begins; null where none is awaited. */
function typedOf({ before, line, row }: CompletionPlace): { readonly text: string; readonly from: number } | null {
  const kind = row === null ? undefined : alike[row.id];
  if (kind === undefined || line.keyword === null) return null;
  const comma = kind === 'last' ? before.lastIndexOf(',') : -1;
  if (kind === 'last' && comma < line.keyword.end) return null;
  const start = Math.max(comma + 1, line.keyword.end);
  const text = before.slice(start).trimStart();
  return text === '' && !/\s$/.test(before) ? null : { text, from: before.length - text.length };
}

/** True where the logs beside this one say something on such a line. */
export const knowsHeadValues = ({ id }: Row, { around }: CompletionPlace): boolean =>
  alike[id] === 'whole' && [...around.used.keys()].some((key) => key.startsWith(`${marker}${id}/`));

/** On a line of the head, what the logs beside this one say there, the commonest first. */
export const suggestHeadValues: SuggestionSource = (place) => {
  const typed = place.where === 'body' ? typedOf(place) : null;
  if (typed === null) return [];
  const key = `${marker}${place.row?.id ?? ''}/`;
  return [...place.around.used]
    .filter(([held]) => held.startsWith(key))
    .sort(([, a], [, b]) => b - a)
    .map(([held]) => held.slice(key.length))
    .filter((value) => value.toLowerCase().startsWith(typed.text.toLowerCase()))
    .map((value) => plain('value', value, l10n.t('as in the logs beside this one'), { from: typed.from }));
};
