import * as l10n from '@vscode/l10n';
import type { Row } from '../../../grammar/table.ts';
import type { Line } from '../../../grammar/tree.ts';
import type { CompletionPlace } from './place.ts';
import { type Saying, sayingsIn } from './sayings.ts';
import { plain, type SuggestionSource } from './suggestion.ts';

/** What the logs of one crew say alike: all that stands on such a line, or of a place in words what stands last. */
const alike: Readonly<Record<string, 'whole' | 'last'>> = {
  well: 'whole',
  units: 'whole',
  owner: 'whole',
  contractor: 'whole',
  technician: 'whole',
  licence: 'whole',
  location: 'last',
};

/** Lines of the head that name another well, by its id. */
const namesWell: ReadonlySet<string> = new Set(['replaces', 'nested']);

/** The line of other logs whose values a line may take: none for a well's own id, which no two wells share. */
const sourceOf = (row: string): string | null => {
  if (namesWell.has(row)) return 'well';
  return row === 'well' || alike[row] === undefined ? null : row;
};

/** What such a value is about, by the row of its line. */
const aboutHead = (row: string): string => `head/${row}`;

/** What a line of the head says that another log may say again; nothing of other lines. */
export function headSayings(line: Line): readonly Saying[] {
  const kind = line.row === null ? undefined : alike[line.row];
  if (kind === undefined || line.keyword === null || line.row === null) return [];
  const said = line.text.slice(line.keyword.end, line.comment?.start ?? line.text.length).trim();
  const value = kind === 'whole' ? said : (said.split(',').at(-1) ?? '').trim();
  return value === '' || value === '?' ? [] : [{ about: aboutHead(line.row), text: value }];
}

/** What is typed so far of a value, and where it begins; null where none is awaited. */
function typedOf({ before, line, row }: CompletionPlace): { readonly text: string; readonly from: number } | null {
  const source = row === null ? null : sourceOf(row.id);
  if (source === null || line.keyword === null) return null;
  const kind = alike[source];
  const comma = kind === 'last' ? before.lastIndexOf(',') : -1;
  if (kind === 'last' && comma < line.keyword.end) return null;
  const start = Math.max(comma + 1, line.keyword.end);
  const text = before.slice(start).trimStart();
  return text === '' && !/\s$/.test(before) ? null : { text, from: before.length - text.length };
}

/** True where the logs beside this one say something on such a line. */
export function knowsHeadValues({ id }: Row, { around }: CompletionPlace): boolean {
  const source = sourceOf(id) ?? '';
  return alike[source] === 'whole' && sayingsIn(around.used).has(aboutHead(source));
}

/** On a line of the head, what the logs beside this one say there, the commonest first. */
export const suggestHeadValues: SuggestionSource = (place) => {
  const typed = place.where === 'body' ? typedOf(place) : null;
  if (typed === null) return [];
  const said = sayingsIn(place.around.used).get(aboutHead(sourceOf(place.row?.id ?? '') ?? '')) ?? [];
  const own = place.snapshot.log.header.well?.text;
  return said
    .filter((value) => value !== own && value.toLowerCase().startsWith(typed.text.toLowerCase()))
    .map((value) => plain('value', value, l10n.t('as in the logs beside this one'), { from: typed.from }));
};
