import * as vscode from 'vscode';
import type { FolderEntry, FolderFact } from '../../server/lsp/protocol.ts';
import { type Filter, inOrder, isShown, type Order } from './order.ts';

/** A well, or a fact below it. */
export type Node = { readonly well: FolderEntry } | { readonly fact: FolderFact; readonly of: FolderEntry };

const stateIcons: Readonly<Record<FolderEntry['state'], vscode.ThemeIcon>> = {
  errors: new vscode.ThemeIcon('error', new vscode.ThemeColor('list.errorForeground')),
  warnings: new vscode.ThemeIcon('warning', new vscode.ThemeColor('list.warningForeground')),
  clean: new vscode.ThemeIcon('pass', new vscode.ThemeColor('testing.iconPassed')),
};

const factIcons: Readonly<Record<string, string>> = {
  depth: 'arrow-down',
  strings: 'layers',
  level: 'triangle-down',
  yield: 'dashboard',
  place: 'location',
  due: 'calendar',
};

function wellItem({ uri, label, description, tooltip, state, facts }: FolderEntry): vscode.TreeItem {
  const folded = facts.length > 0 ? vscode.TreeItemCollapsibleState.Collapsed : vscode.TreeItemCollapsibleState.None;
  const item = new vscode.TreeItem(label, folded);
  item.id = uri;
  item.description = description;
  item.tooltip = tooltip;
  item.iconPath = stateIcons[state];
  item.contextValue = 'well';
  item.accessibilityInformation = { label: vscode.l10n.t('Well {0}: {1}', label, description) };
  item.command = { command: 'vscode.open', title: vscode.l10n.t('Open Log'), arguments: [vscode.Uri.parse(uri)] };
  return item;
}

function factItem({ label, value, sign }: FolderFact, { uri }: FolderEntry): vscode.TreeItem {
  const item = new vscode.TreeItem(value);
  item.id = `${uri}#${sign}`;
  item.description = label;
  item.tooltip = `${label}: ${value}`;
  item.iconPath = new vscode.ThemeIcon(factIcons[sign] ?? 'circle-small');
  item.accessibilityInformation = { label: `${label}: ${value}` };
  return item;
}

/** The wells as a tree, sorted and filtered. */
export class WellsTree implements vscode.TreeDataProvider<Node> {
  readonly #changed = new vscode.EventEmitter<void>();
  readonly onDidChangeTreeData = this.#changed.event;
  #wells: readonly FolderEntry[] = [];
  #order: Order = 'id';
  #filter: Filter = { kind: 'all' };

  get order(): Order {
    return this.#order;
  }

  get filter(): Filter {
    return this.#filter;
  }

  /** How many of the wells are shown, and how many there are. */
  get counts(): { readonly shown: number; readonly all: number } {
    return { shown: this.#shown().length, all: this.#wells.length };
  }

  show(wells: readonly FolderEntry[]): void {
    this.#wells = wells;
    this.#changed.fire();
  }

  sortBy(order: Order): void {
    this.#order = order;
    this.#changed.fire();
  }

  filterBy(filter: Filter): void {
    this.#filter = filter;
    this.#changed.fire();
  }

  getTreeItem(node: Node): vscode.TreeItem {
    return 'well' in node ? wellItem(node.well) : factItem(node.fact, node.of);
  }

  getChildren(node?: Node): Node[] {
    if (node === undefined) return this.#shown().map((well) => ({ well }));
    return 'well' in node ? node.well.facts.map((fact) => ({ fact, of: node.well })) : [];
  }

  getParent(node: Node): Node | null {
    return 'well' in node ? null : { well: node.of };
  }

  dispose(): void {
    this.#changed.dispose();
  }

  #shown(): readonly FolderEntry[] {
    return inOrder(
      this.#wells.filter((well) => isShown(well, this.#filter)),
      this.#order,
    );
  }
}
