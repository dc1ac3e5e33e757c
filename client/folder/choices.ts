import * as vscode from 'vscode';
import type { Filter, Order } from './order.ts';

interface Choice<T> extends vscode.QuickPickItem {
  readonly value: T;
}

const orderChoices = (): Choice<Order>[] => [
  { value: 'id', label: vscode.l10n.t('Well id') },
  { value: 'file', label: vscode.l10n.t('File') },
  { value: 'depth', label: vscode.l10n.t('Depth, deepest first') },
  { value: 'due', label: vscode.l10n.t('Due date, soonest first') },
  { value: 'findings', label: vscode.l10n.t('Findings, gravest first') },
];

const filterChoices = (): Choice<Filter['kind']>[] => [
  { value: 'all', label: vscode.l10n.t('All wells') },
  { value: 'errors', label: vscode.l10n.t('Wells with errors') },
  { value: 'warnings', label: vscode.l10n.t('Wells with errors or warnings') },
  { value: 'due', label: vscode.l10n.t('Wells with something due') },
  { value: 'words', label: vscode.l10n.t('Wells that hold certain words…') },
];

/** The choices with a mark at the one that holds now. */
const marked = <T>(choices: readonly Choice<T>[], now: T): Choice<T>[] =>
  choices.map((choice) => (choice.value === now ? { ...choice, description: vscode.l10n.t('now') } : choice));

/** Asks what to sort by; undefined where the user goes away. */
export async function askOrder(now: Order): Promise<Order | undefined> {
  const placeHolder = vscode.l10n.t('Sort the wells by');
  return (await vscode.window.showQuickPick(marked(orderChoices(), now), { placeHolder }))?.value;
}

async function askWords(now: Filter): Promise<Filter | undefined> {
  const words = await vscode.window.showInputBox({
    prompt: vscode.l10n.t('Words of the id, the file, the place or the owner; all of them must be there'),
    value: now.kind === 'words' ? now.words : '',
  });
  if (words === undefined) return undefined;
  return words.trim() === '' ? { kind: 'all' } : { kind: 'words', words: words.trim() };
}

/** Asks which wells to show; undefined where the user goes away. */
export async function askFilter(now: Filter): Promise<Filter | undefined> {
  const placeHolder = vscode.l10n.t('Show');
  const picked = await vscode.window.showQuickPick(marked(filterChoices(), now.kind), { placeHolder });
  if (picked === undefined) return undefined;
  return picked.value === 'words' ? askWords(now) : { kind: picked.value };
}

/** What a filter lets through, in words; undefined where it lets through all. */
export function filterText(filter: Filter): string | undefined {
  if (filter.kind === 'all') return undefined;
  if (filter.kind === 'words') return filter.words;
  return filterChoices().find(({ value }) => value === filter.kind)?.label;
}
