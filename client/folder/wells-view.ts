import * as vscode from 'vscode';
import { type FolderWells, folderRequest } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';
import { askFilter, askOrder, filterText } from './choices.ts';
import { type Filter, type Order, orders } from './order.ts';
import { WellsTree } from './wells-tree.ts';

const orderKey = 'drillhand.wells.order';

const setContext = (key: string, value: boolean): Thenable<unknown> =>
  vscode.commands.executeCommand('setContext', key, value);

/** The wells of the open folders in the explorer, kept as the server tells that they changed. */
class WellsView {
  readonly #server: CheckerServer;
  readonly #memory: vscode.Memento;
  readonly #tree = new WellsTree();
  readonly #view = vscode.window.createTreeView('drillhand.wells', { treeDataProvider: this.#tree });
  #known: FolderWells = { wells: [], isReading: true, note: null };

  constructor(server: CheckerServer, memory: vscode.Memento) {
    this.#server = server;
    this.#memory = memory;
    const order = memory.get<Order>(orderKey);
    if (order !== undefined && orders.includes(order)) this.#tree.sortBy(order);
  }

  async refresh(): Promise<void> {
    this.#known = await this.#server.ask<FolderWells>(folderRequest, undefined);
    this.#tree.show(this.#known.wells);
    await setContext('drillhand.hasWells', this.#known.wells.length > 0);
    this.#describe();
  }

  async sort(): Promise<void> {
    const order = await askOrder(this.#tree.order);
    if (order === undefined) return;
    this.#tree.sortBy(order);
    await this.#memory.update(orderKey, order);
  }

  async filter(): Promise<void> {
    const filter = await askFilter(this.#tree.filter);
    if (filter !== undefined) await this.showOnly(filter);
  }

  async showOnly(filter: Filter): Promise<void> {
    this.#tree.filterBy(filter);
    await setContext('drillhand.wellsAreFiltered', filter.kind !== 'all');
    this.#describe();
  }

  dispose(): void {
    this.#view.dispose();
    this.#tree.dispose();
  }

  #describe(): void {
    const { shown, all } = this.#tree.counts;
    const filter = filterText(this.#tree.filter);
    this.#view.description = filter ?? '';
    const lines = [
      ...(filter === undefined ? [] : [vscode.l10n.t('{0} of {1} wells', shown, all)]),
      ...(this.#known.isReading ? [vscode.l10n.t('Logs are being read…')] : []),
      ...(this.#known.note === null ? [] : [this.#known.note]),
    ];
    this.#view.message = lines.join(' ');
  }
}

/** Registers the view of the wells with its commands. */
export function registerWells(context: vscode.ExtensionContext, server: CheckerServer): vscode.Disposable[] {
  const view = new WellsView(server, context.workspaceState);
  const refresh = () => view.refresh().catch(() => {});
  return [
    view,
    server.onFolderChanged(refresh),
    vscode.commands.registerCommand('drillhand.sortWells', () => view.sort()),
    vscode.commands.registerCommand('drillhand.filterWells', () => view.filter()),
    vscode.commands.registerCommand('drillhand.showAllWells', () => view.showOnly({ kind: 'all' })),
  ];
}
