import * as vscode from 'vscode';
import {
  type Choice,
  type NewLogChoices,
  type NewLogParams,
  newLogChoicesRequest,
  newLogRequest,
} from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

interface Pick extends vscode.QuickPickItem {
  readonly id: string;
}

const picks = (choices: readonly Choice[]): Pick[] =>
  choices.map(({ id, title }) => ({ id, label: id, description: title }));

const askUnits = (choices: readonly Choice[]): Thenable<Pick | undefined> =>
  vscode.window.showQuickPick(picks(choices), {
    title: vscode.l10n.t('New Well Log (1 of 2)'),
    placeHolder: vscode.l10n.t('Units of numbers that stand without one'),
    matchOnDescription: true,
  });

const askPacks = (choices: readonly Choice[]): Thenable<Pick[] | undefined> =>
  vscode.window.showQuickPick(picks(choices), {
    title: vscode.l10n.t('New Well Log (2 of 2)'),
    placeHolder: vscode.l10n.t('Rule packs to check against; none means general'),
    matchOnDescription: true,
    canPickMany: true,
  });

async function openWith(snippet: string): Promise<void> {
  const document = await vscode.workspace.openTextDocument({ language: 'drillhand', content: '' });
  const editor = await vscode.window.showTextDocument(document);
  await editor.insertSnippet(new vscode.SnippetString(snippet));
}

/** Begins a log in an editor of its own; everything that is not known yet is a question mark, which Tab goes to. */
export const registerNewLog = (server: CheckerServer): vscode.Disposable =>
  vscode.commands.registerCommand('drillhand.newLog', async () => {
    const choices = await server.ask<NewLogChoices>(newLogChoicesRequest, undefined);
    const units = await askUnits(choices.units);
    if (units === undefined) return;
    const packs = await askPacks(choices.packs);
    if (packs === undefined) return;
    const params: NewLogParams = { units: units.id, packs: packs.map(({ id }) => id) };
    await openWith(await server.ask<string>(newLogRequest, params));
  });
