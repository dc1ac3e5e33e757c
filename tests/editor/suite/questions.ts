import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openText } from './documents.ts';
import { type Tests, until } from './harness.ts';

export const questions: Tests = {
  async 'the questions for the crew open as a text that can be sent, and leave the log as it is'() {
    const { document: log } = await openText(
      'well QX-1\nhole\n  0 - 30 ?\nstrata\n  0 - 12? clay\n    - 30  limestone\n',
    );
    const before = log.getText();
    await vscode.commands.executeCommand('drillhand.questions');
    const sheet = await until('the questions', () => {
      const open = vscode.window.activeTextEditor?.document;
      return open !== undefined && open !== log && open.getText().includes('QX-1') ? open : undefined;
    });
    const text = sheet.getText();
    assert.equal(sheet.isUntitled, true);
    assert.match(text, /\b1\. /);
    assert.match(text, /line 3/);
    assert.match(text, /line 5/);
    assert.equal(log.getText(), before);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  },
};
