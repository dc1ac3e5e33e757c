import { expect, test, vi } from 'vitest';
import type { FolderEntry } from '../../server/lsp/protocol.ts';

/** As much of the editor's interface as the tree uses. */
vi.mock('vscode', () => ({
  ThemeIcon: class {
    constructor(readonly id: string) {}
  },
  ThemeColor: class {},
  TreeItem: class {
    constructor(
      readonly label: string,
      readonly collapsibleState = 0,
    ) {}
  },
  TreeItemCollapsibleState: { None: 0, Collapsed: 1 },
  EventEmitter: class {
    event = () => {};
    fire() {}
    dispose() {}
  },
  Uri: { parse: (text: string) => text },
  l10n: {
    t: (text: string, ...values: string[]) => text.replace(/\{(\d)\}/g, (_, at: string) => values[Number(at)] ?? ''),
  },
}));

const { WellsTree } = await import('../../client/folder/wells-tree.ts');

const well = (label: string, state: FolderEntry['state']): FolderEntry => ({
  uri: `file:///${label}.well`,
  label,
  description: '61 m · 1 error',
  tooltip: `${label} (${label}.well)`,
  state,
  facts: [{ label: 'Depth', value: '61 m', sign: 'depth' }],
  keys: { id: label, file: `${label}.well`, depth: 61, due: null, findings: 0 },
});

const tree = new WellsTree();
tree.show([well('KH-2', 'clean'), well('KH-10', 'errors')]);

test('each well has its label, description, tooltip, name for readers of the screen, and log to open', () => {
  const [, node] = tree.getChildren();
  expect(node && tree.getTreeItem(node)).toMatchObject({
    label: 'KH-10',
    description: '61 m · 1 error',
    tooltip: 'KH-10 (KH-10.well)',
    iconPath: { id: 'error' },
    collapsibleState: 1,
    accessibilityInformation: { label: 'Well KH-10: 61 m · 1 error' },
    command: { command: 'vscode.open', arguments: ['file:///KH-10.well'] },
  });
});

test('below it stand its facts', () => {
  const [node] = tree.getChildren();
  const [fact] = tree.getChildren(node);
  expect(fact && tree.getTreeItem(fact)).toMatchObject({
    label: '61 m',
    description: 'Depth',
    accessibilityInformation: { label: 'Depth: 61 m' },
  });
  expect(fact && tree.getParent(fact)).toEqual(node);
});

test('a filter leaves out the others and counts them', () => {
  tree.filterBy({ kind: 'errors' });
  expect(tree.getChildren()).toHaveLength(1);
  expect(tree.counts).toEqual({ shown: 1, all: 2 });
});
