import * as l10n from '@vscode/l10n';
import { rememberedOfLine } from '../../grammar/line-notes.ts';
import type { Columns } from '../../grammar/span.ts';
import { termLists } from '../../grammar/terms/index.ts';
import type { ListId, Term } from '../../grammar/terms/term.ts';
import type { Item, Line } from '../../grammar/tree.ts';

/** A term of the trade as it stands on a line. */
export interface Word extends Columns {
  readonly list: ListId;
  readonly term: Term;
}

function wordsOfItem({ value }: Item): readonly Word[] {
  if (value.kind === 'term') return [value];
  if (value.kind !== 'description') return [];
  return value.description.atoms.flatMap((atom) => atom.mentions);
}

/** Every term on a line, in the order of the line. */
export const wordsOf = rememberedOfLine((line: Line): readonly Word[] => line.items.flatMap(wordsOfItem));

const titles = new Map(termLists.map((list) => [list.id, list.title]));

/** The title of a list of terms, in the language of the editor. */
export function listTitle(list: ListId): string {
  const title = titles.get(list) ?? list;
  return l10n.t(title);
}

const byList = new Map(termLists.map((list) => [list.id, list.terms]));

/** The terms of a list. */
export const termsOf = (list: ListId): readonly Term[] => byList.get(list) ?? [];
