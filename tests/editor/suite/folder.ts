import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { findingsOf, openText, untilFound, untilGone } from './documents.ts';
import { type Tests, until } from './harness.ts';

const fileOf = (name: string): vscode.Uri => {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  assert.ok(folder);
  return vscode.Uri.joinPath(folder.uri, name);
};

const write = (uri: vscode.Uri, text: string): Thenable<void> =>
  vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));

const limit = { value: 0.6, unit: 'm', text: '60 cm', source: 'made up', known: 'read', date: null };
const fenPack = { id: 'fen-1', title: 'Fen', notice: 'A help, not the law.', limits: { 'stickup-least': limit } };

const ofDrillhand = (uri: vscode.Uri): vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(uri).filter(({ source }) => source === 'drillhand');

async function openLogHere(name: string, text: string): Promise<vscode.TextDocument> {
  await write(fileOf(name), text);
  return (await vscode.window.showTextDocument(fileOf(name))).document;
}

const offeredAt = async (uri: vscode.Uri, place: vscode.Position): Promise<string[]> => {
  const list = await vscode.commands.executeCommand<vscode.CompletionList>(
    'vscode.executeCompletionItemProvider',
    uri,
    place,
  );
  return list.items.map(({ label }) => (typeof label === 'string' ? label : label.label).replaceAll('"', ''));
};

export const folder: Tests = {
  async 'a pack of the workspace is in force once it is saved, and a broken one is told in its own file'() {
    const pack = fileOf('fen.wellrules.json');
    const log = await openLogHere('packed.well', 'rules fen-1\ncasing +0.4 - 30 pvc 114.3\n');
    await untilFound(log.uri, 'unknown-pack');
    await write(pack, '{\n "id": "fen-1",\n "title": 3\n}');
    await until('the fault in the pack', () => ofDrillhand(pack)[0]);
    assert.deepEqual(ofDrillhand(pack)[0]?.range.start, new vscode.Position(2, 10));
    assert.equal(findingsOf(log.uri, 'unknown-pack').length, 1);
    await write(pack, JSON.stringify(fenPack));
    await untilFound(log.uri, 'stickup-low');
    await untilGone(log.uri, 'unknown-pack');
    assert.deepEqual(ofDrillhand(pack), []);
    await vscode.workspace.fs.delete(pack);
    await untilFound(log.uri, 'unknown-pack');
    await vscode.workspace.fs.delete(log.uri);
  },

  async 'a drillhand.json sets a rule for the folder, and comes before the settings of the editor'() {
    const settings = fileOf('drillhand.json');
    const log = await openLogHere('gap.well', 'strata\n  0 - 4 clay\n  5 - 9 sand\n');
    await untilFound(log.uri, 'interval-gap');
    await write(settings, '{"rules": {"interval-gap": "hint"}}');
    const severity = () => findingsOf(log.uri, 'interval-gap')[0]?.severity;
    await until('a hint', () => severity() === vscode.DiagnosticSeverity.Hint);
    await write(settings, '{"rules": {"interval-gp": "off"}}');
    await until('the unknown rule', () => ofDrillhand(settings).some(({ message }) => /interval-gap\?/.test(message)));
    await vscode.workspace.fs.delete(settings);
    await until('a warning', () => severity() === vscode.DiagnosticSeverity.Warning);
    await vscode.workspace.fs.delete(log.uri);
  },

  async 'packs and settings are completed by their published schemas'() {
    await write(fileOf('drillhand.json'), '{"rules": {}}');
    const settings = (await vscode.window.showTextDocument(fileOf('drillhand.json'))).document;
    await until('the rules', async () =>
      (await offeredAt(settings.uri, new vscode.Position(0, 11))).includes('missing-shoe'),
    );
    await write(fileOf('new.wellrules.json'), '{"limits": {}}');
    const pack = (await vscode.window.showTextDocument(fileOf('new.wellrules.json'))).document;
    await until('the limits', async () =>
      (await offeredAt(pack.uri, new vscode.Position(0, 12))).includes('stickup-least'),
    );
    for (const { uri } of [settings, pack]) await vscode.workspace.fs.delete(uri);
    await vscode.commands.executeCommand('workbench.action.closeAllEditors');
  },

  async 'a log that is not saved anywhere is checked as ever'() {
    const { document } = await openText('strata\n  4 - 2 clay\n');
    await untilFound(document.uri, 'interval-reversed');
  },
};
