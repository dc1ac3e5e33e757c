import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openLog } from './documents.ts';
import { type Tests, until } from './harness.ts';

const previewTabs = (): vscode.Tab[] =>
  vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof vscode.TabInputWebview && input.viewType.endsWith('drillhand.preview'));

const openPreview = () => vscode.commands.executeCommand('drillhand.openPreview');

export const preview: Tests = {
  async 'the preview opens beside the log and is named after the well'() {
    await openLog('sound.well');
    await openPreview();
    await until('a preview named after its well', () => previewTabs().some(({ label }) => label.includes('KH-04')));
    assert.equal(vscode.window.activeTextEditor?.document.uri.path.endsWith('sound.well'), true);
  },

  async 'two logs have a preview each, and asking twice opens no second one'() {
    await openLog('no-shoe.well');
    await openPreview();
    await openPreview();
    await until('both previews', () => previewTabs().length === 2);
    assert.ok(await until('the second name', () => previewTabs().some(({ label }) => label.includes('FM-11'))));
    await vscode.window.tabGroups.close(previewTabs());
    assert.equal(previewTabs().length, 0);
  },
};
