import type { FolderEntry } from '../../server/lsp/protocol.ts';

/** What the wells can be sorted by. */
export const orders = ['id', 'file', 'depth', 'due', 'findings'] as const;
export type Order = (typeof orders)[number];

/** Which wells are shown: all, those in a state, those with something due, or those that hold the words. */
export type Filter =
  | { readonly kind: 'all' | 'errors' | 'warnings' | 'due' }
  | { readonly kind: 'words'; readonly words: string };

type Key = string | number | null;

const keyOf: Readonly<Record<Order, (well: FolderEntry) => Key>> = {
  id: ({ keys }) => keys.id,
  file: ({ keys }) => keys.file,
  depth: ({ keys }) => (keys.depth === null ? null : -keys.depth),
  due: ({ keys }) => keys.due,
  findings: ({ keys }) => -keys.findings,
};

function compare(a: Key, b: Key): number {
  if (a === null || b === null) return (a === null ? 1 : 0) - (b === null ? 1 : 0);
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return String(a).localeCompare(String(b), undefined, { numeric: true, sensitivity: 'base' });
}

/** Ids and files upwards, the deepest, the soonest due and the gravest first; what is not known last. */
export const inOrder = (wells: readonly FolderEntry[], order: Order): readonly FolderEntry[] =>
  [...wells].sort((a, b) => compare(keyOf[order](a), keyOf[order](b)) || compare(a.keys.file, b.keys.file));

const holdsWords = ({ label, tooltip }: FolderEntry, words: string): boolean => {
  const text = `${label}\n${tooltip}`.toLowerCase();
  return words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
};

export function isShown(well: FolderEntry, filter: Filter): boolean {
  if (filter.kind === 'errors') return well.state === 'errors';
  if (filter.kind === 'warnings') return well.state !== 'clean';
  if (filter.kind === 'due') return well.keys.due !== null;
  return filter.kind !== 'words' || holdsWords(well, filter.words);
}
