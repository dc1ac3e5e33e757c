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

  async 'the key that opens the preview does nothing else in a log'() {
    const defaults = await vscode.workspace.openTextDocument(
      vscode.Uri.parse('vscode://defaultsettings/keybindings.json'),
    );
    const binding = /\{\s*"key":\s*"ctrl\+k v",\s*"command":\s*"([^"]+)"(?:,\s*"when":\s*"([^"]*)")?/g;
    const bound = [...defaults.getText().matchAll(binding)].map(([, command = '', when = '']) => ({ command, when }));
    assert.ok(bound.some(({ command }) => command === 'drillhand.openPreview'));
    const others = bound.filter(({ command }) => command !== 'drillhand.openPreview');
    // What holds for other languages alone cannot be meant in a log.
    assert.deepEqual(
      others.filter(({ when }) => !/editorLangId\s*(?:==|=~)/.test(when)),
      [],
    );
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
