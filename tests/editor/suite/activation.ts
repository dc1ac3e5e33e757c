import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openLog } from './documents.ts';
import { type Tests, until } from './harness.ts';

const extension = () => vscode.extensions.getExtension('drillhand.drillhand');

export const activation: Tests = {
  async 'a .well file is a drillhand document and starts the extension'() {
    const editor = await openLog('sound.well');
    assert.equal(editor.document.languageId, 'drillhand');
    await until('the extension to be active', () => extension()?.isActive);
  },

  async 'every command of the manifest is there'() {
    const registered = await vscode.commands.getCommands(true);
    const declared: { command: string }[] = extension()?.packageJSON.contributes.commands;
    assert.ok(declared.length > 0);
    for (const { command } of declared) assert.ok(registered.includes(command), command);
  },

  async 'a line is commented with #'() {
    const editor = await openLog('sound.well');
    await vscode.commands.executeCommand('cursorTop');
    await vscode.commands.executeCommand('cursorDown');
    await vscode.commands.executeCommand('editor.action.commentLine');
    assert.match(editor.document.lineAt(1).text, /^# well/);
    await vscode.commands.executeCommand('workbench.action.files.revert');
  },
};
