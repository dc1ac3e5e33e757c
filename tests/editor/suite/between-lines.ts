import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openText, positionOf } from './documents.ts';
import { type Tests, until } from './harness.ts';

const log = [
  'units m mm',
  'strata',
  '  0 - 7.2 clay, brown',
  '  - 38 ft sand',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
  '  shoe 7.2',
  '',
].join('\n');

const whole = (document: vscode.TextDocument): vscode.Range => new vscode.Range(0, 0, document.lineCount, 0);

const refactorings = async (document: vscode.TextDocument, at: vscode.Position): Promise<vscode.CodeAction[]> =>
  vscode.commands.executeCommand<vscode.CodeAction[]>(
    'vscode.executeCodeActionProvider',
    document.uri,
    new vscode.Range(at, at),
    vscode.CodeActionKind.Refactor.value,
    20,
  );

async function convert(document: vscode.TextDocument): Promise<void> {
  const action = (await refactorings(document, new vscode.Position(0, 0))).find(({ title }) =>
    title.startsWith('Convert'),
  );
  assert.ok(action?.edit, 'the conversion is offered and worked out');
  assert.ok(await vscode.workspace.applyEdit(action.edit));
}

const labelOf = ({ label }: vscode.InlayHint): string =>
  typeof label === 'string' ? label : label.map(({ value }) => value).join('');

export const betweenLines: Tests = {
  async 'hints and totals stand beside the text, and each can be switched off'() {
    const { document } = await openText(log);
    const hints = () =>
      vscode.commands.executeCommand<vscode.InlayHint[]>(
        'vscode.executeInlayHintProvider',
        document.uri,
        whole(document),
      );
    const first = await until('hints', async () => {
      const found = await hints();
      return found.length > 0 && found;
    });
    assert.deepEqual(first.map(labelOf), ['= 11.58 m', '4.382 m']);
    const settings = vscode.workspace.getConfiguration('drillhand', document.uri);
    await settings.update('inlayHints.units', false);
    await until('one hint less', async () => (await hints()).length === 1);
    await settings.update('inlayHints.units', undefined);
    const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>(
      'vscode.executeCodeLensProvider',
      document.uri,
      9,
    );
    assert.deepEqual(
      lenses.map(({ command }) => command?.title),
      ['2 layers · down to 11.58 m', '7.65 m long'],
    );
  },

  async 'a click on a total shows the section in the preview'() {
    const { document } = await openText(log);
    const lenses = await until('totals', async () => {
      const found = await vscode.commands.executeCommand<vscode.CodeLens[]>(
        'vscode.executeCodeLensProvider',
        document.uri,
        9,
      );
      return found.length > 0 && found;
    });
    const { command } = lenses[1] ?? {};
    assert.ok(command);
    await vscode.commands.executeCommand(command.command, ...(command.arguments ?? []));
    const isPreview = ({ input }: vscode.Tab) =>
      input instanceof vscode.TabInputWebview && input.viewType.includes('drillhand');
    await until('the preview', () => vscode.window.tabGroups.all.some(({ tabs }) => tabs.some(isPreview)));
    assert.equal(vscode.window.visibleTextEditors[0]?.selection.active.line, 4);
    await vscode.commands.executeCommand('workbench.action.closeEditorsInOtherGroups');
  },

  async 'definition and references lead between a contact and what leans on it'() {
    const { document } = await openText(log);
    const shoe = positionOf(document, 'shoe 7.2', 'shoe 7'.length);
    const definition = await until('a definition', async () => {
      const found = await vscode.commands.executeCommand<vscode.Location[]>(
        'vscode.executeDefinitionProvider',
        document.uri,
        shoe,
      );
      return found.length > 0 && found;
    });
    assert.equal(definition[0]?.range.start.line, 2);
    const references = await vscode.commands.executeCommand<vscode.Location[]>(
      'vscode.executeReferenceProvider',
      document.uri,
      shoe,
    );
    assert.deepEqual(
      references.map(({ range }) => range.start.line),
      [2, 3, 4, 5],
    );
  },

  async 'the file is converted to feet, and back to the very text that it was'() {
    const { document } = await openText(log);
    await until('the conversion', async () => (await refactorings(document, new vscode.Position(0, 0))).length > 0);
    await convert(document);
    assert.match(document.getText(), /^units ft in\nstrata\n {2}0 - 23\.62205 clay/);
    await until('the way back', async () =>
      (await refactorings(document, new vscode.Position(0, 0))).some(({ title }) => title.includes('metres')),
    );
    await convert(document);
    assert.equal(document.getText(), log);
  },

  async 'what a line takes is told with the next thing marked'() {
    const { document } = await openText('casing 0 - 7.2 \n');
    const help = await until('help', () =>
      vscode.commands.executeCommand<vscode.SignatureHelp | undefined>(
        'vscode.executeSignatureHelpProvider',
        document.uri,
        new vscode.Position(0, 15),
      ),
    );
    const [signature] = help.signatures;
    const label = signature?.parameters[help.activeParameter]?.label;
    assert.equal(Array.isArray(label) ? signature?.label.slice(label[0], label[1]) : label, 'material');
  },

  async 'a rule named in an allow leads to its page'() {
    const { document } = await openText('strata\n  0 - 3 clay # allow missing-shoe: none here\n');
    const links = await until('a link', async () => {
      const found = await vscode.commands.executeCommand<vscode.DocumentLink[]>(
        'vscode.executeLinkProvider',
        document.uri,
        9,
      );
      return found.length > 0 && found;
    });
    const target = links[0]?.target;
    assert.ok(target);
    assert.match((await vscode.workspace.openTextDocument(target)).getText(), /^# missing/);
  },
};
