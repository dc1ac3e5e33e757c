import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { findingsOf, openLog, openText, replaceText, untilFound, untilGone } from './documents.ts';
import { type Tests, until } from './harness.ts';

const isGrave = (finding: vscode.Diagnostic): boolean => finding.severity <= vscode.DiagnosticSeverity.Warning;

const fixesAt = async (uri: vscode.Uri, range: vscode.Range): Promise<vscode.CodeAction[]> =>
  (await vscode.commands.executeCommand<vscode.CodeAction[]>('vscode.executeCodeActionProvider', uri, range)).filter(
    (action) => action.kind?.contains(vscode.CodeActionKind.QuickFix) ?? false,
  );

const apply = async (fix: vscode.CodeAction): Promise<void> => {
  assert.ok(fix.edit, fix.title);
  assert.ok(await vscode.workspace.applyEdit(fix.edit));
};

const settings = () => vscode.workspace.getConfiguration('drillhand');

export const findings: Tests = {
  async 'a driven string without a shoe is an error on its line'() {
    const { document } = await openLog('no-shoe.well');
    const finding = await untilFound(document.uri, 'missing-shoe');
    assert.equal(finding.severity, vscode.DiagnosticSeverity.Error);
    assert.match(document.lineAt(finding.range.start.line).text, /^casing/);
    assert.match(finding.message, /shoe/);
  },

  async 'a quick fix adds the shoe and its finding goes'() {
    const { document } = await openLog('no-shoe.well');
    const finding = await untilFound(document.uri, 'missing-shoe');
    const fix = (await fixesAt(document.uri, finding.range)).find(
      ({ title }) => /shoe/i.test(title) && !title.startsWith('Allow'),
    );
    assert.ok(fix);
    await apply(fix);
    await untilGone(document.uri, 'missing-shoe');
    assert.match(document.getText(), /^\s+shoe\b/m);
    await vscode.commands.executeCommand('workbench.action.files.revert');
  },

  async 'a word that no list knows is kept, hinted at, and mended to the nearest term'() {
    const { document } = await openText('strata\n  0 - 4  limstone, grey\n');
    const finding = await untilFound(document.uri, 'unknown-term');
    assert.equal(document.getText(finding.range), 'limstone');
    const fix = (await fixesAt(document.uri, finding.range)).find(({ title }) => title.includes('limestone'));
    assert.ok(fix);
    await apply(fix);
    await untilGone(document.uri, 'unknown-term');
    assert.match(document.getText(), /limestone, grey/);
  },

  async 'a sound log has at most three findings of weight, and an edit brings one more at once'() {
    const editor = await openLog('sound.well');
    const { uri } = editor.document;
    await until('the log to be checked', () => vscode.languages.getDiagnostics(uri).filter(isGrave).length <= 3);
    await replaceText(editor, '  shoe          7.2\n', '  shoe          6.2\n');
    const finding = await untilFound(uri, 'shoe-not-at-foot');
    assert.match(finding.message, /6\.2/);
    assert.match(finding.message, /7\.2/);
    await vscode.commands.executeCommand('workbench.action.files.revert');
    await untilGone(uri, 'shoe-not-at-foot');
  },

  async 'a setting changes how strongly a rule speaks, and silences it'() {
    const { document } = await openLog('no-shoe.well');
    await untilFound(document.uri, 'missing-shoe');
    const setTo = (severity: string) => settings().update('rules.severity', { 'missing-shoe': severity });
    await setTo('information');
    await until('the milder finding', () =>
      findingsOf(document.uri, 'missing-shoe').some(
        ({ severity }) => severity === vscode.DiagnosticSeverity.Information,
      ),
    );
    await setTo('off');
    await untilGone(document.uri, 'missing-shoe');
    await settings().update('rules.severity', undefined);
    await untilFound(document.uri, 'missing-shoe');
  },

  async 'the checker can be restarted and checks again'() {
    const { document } = await openLog('no-shoe.well');
    await vscode.commands.executeCommand('drillhand.restartServer');
    await untilFound(document.uri, 'missing-shoe');
  },
};
