import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openLog, openText, positionOf } from './documents.ts';
import { type Tests, until } from './harness.ts';

const labelOf = ({ label }: vscode.CompletionItem): string => (typeof label === 'string' ? label : label.label);

const completionsAt = async (uri: vscode.Uri, position: vscode.Position): Promise<string[]> => {
  const command = 'vscode.executeCompletionItemProvider';
  return (await vscode.commands.executeCommand<vscode.CompletionList>(command, uri, position)).items.map(labelOf);
};

const hoverAt = async (uri: vscode.Uri, position: vscode.Position): Promise<string> => {
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>('vscode.executeHoverProvider', uri, position);
  return hovers
    .flatMap(({ contents }) => contents.map((part) => (typeof part === 'string' ? part : part.value)))
    .join('\n');
};

const formatted = async (editor: vscode.TextEditor): Promise<string> => {
  await vscode.commands.executeCommand('editor.action.formatDocument');
  return editor.document.getText();
};

export const languageFeatures: Tests = {
  async 'completion offers keywords at a line, materials in strata'() {
    const { document } = await openText('\nstrata\n  0 - 4  lime\n');
    const atStart = await until('keywords', async () => {
      const labels = await completionsAt(document.uri, new vscode.Position(0, 0));
      return labels.includes('casing') && labels;
    });
    assert.ok(atStart.includes('strata'));
    const inStrata = await completionsAt(document.uri, positionOf(document, 'lime', 4));
    assert.ok(inStrata.includes('limestone'), inStrata.join(' '));
  },

  async 'hover tells a term in full and a value in both systems'() {
    const { document } = await openText('strata\n  0 - 6.1  lst, gry\nwater\n  4  fresh, 25 L/min\n');
    const term = await until('a hover on the term', () => hoverAt(document.uri, positionOf(document, 'lst', 1)));
    assert.match(term, /limestone/i);
    // NIST SP 811, appendix B.8: 1 US gallon = 3.785 412 L, so 25 L/min is 6.604 gal/min.
    assert.match(await hoverAt(document.uri, positionOf(document, '25 L/min', 1)), /6\.604\b/);
  },

  async 'formatting writes short forms out, and formatting again changes nothing'() {
    const editor = await openLog('hurried.well');
    const once = await formatted(editor);
    assert.match(once, /topsoil, dark brown/);
    assert.match(once, /limestone, grey, fractured\s+; soft seam at 22/);
    assert.equal(await formatted(editor), once);
    await vscode.commands.executeCommand('workbench.action.files.revert');
  },

  async 'the outline names the sections, and each can be folded'() {
    const { document } = await openLog('sound.well');
    const symbols = await until('the outline', () =>
      vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>(
        'vscode.executeDocumentSymbolProvider',
        document.uri,
      ),
    );
    const names = symbols.map(({ name }) => name).join('\n');
    for (const section of ['hole', 'strata', 'casing', 'water']) assert.match(names, new RegExp(section, 'i'));
    const command = 'vscode.executeFoldingRangeProvider';
    const folds = await vscode.commands.executeCommand<vscode.FoldingRange[]>(command, document.uri);
    const strata = positionOf(document, 'strata').line;
    assert.ok(folds.some(({ start, end }) => start === strata && end >= strata + 5));
  },
};
