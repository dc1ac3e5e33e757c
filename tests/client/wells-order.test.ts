import { expect, test } from 'vitest';
import { type Filter, inOrder, isShown, type Order } from '../../client/folder/order.ts';
import type { FolderEntry } from '../../server/lsp/protocol.ts';

const well = (label: string, state: FolderEntry['state'], keys: Partial<FolderEntry['keys']> = {}): FolderEntry => ({
  uri: `file:///${label}`,
  label,
  description: '',
  tooltip: `${label}\nOwner: Heron Spring`,
  state,
  facts: [],
  keys: { id: label, file: `${label}.well`, depth: null, due: null, findings: 0, ...keys },
});

const wells = [
  well('KH-10', 'clean', { depth: 20, due: '2027-01-30' }),
  well('KH-2', 'errors', { depth: 91, findings: 2_000_000 }),
  well('a', 'warnings', { due: '2026-12-01', findings: 1000 }),
];

test.each<[Order, string[]]>([
  ['id', ['a', 'KH-2', 'KH-10']],
  ['file', ['a', 'KH-2', 'KH-10']],
  ['depth', ['KH-2', 'KH-10', 'a']],
  ['due', ['a', 'KH-10', 'KH-2']],
  ['findings', ['KH-2', 'a', 'KH-10']],
])('by %s', (order, labels) => {
  expect(inOrder(wells, order).map(({ label }) => label)).toEqual(labels);
});

test.each<[Filter, string[]]>([
  [{ kind: 'all' }, ['KH-10', 'KH-2', 'a']],
  [{ kind: 'errors' }, ['KH-2']],
  [{ kind: 'warnings' }, ['KH-2', 'a']],
  [{ kind: 'due' }, ['KH-10', 'a']],
  [{ kind: 'words', words: 'heron kh' }, ['KH-10', 'KH-2']],
])('shows with %j', (filter, labels) => {
  expect(wells.filter((each) => isShown(each, filter)).map(({ label }) => label)).toEqual(labels);
});
