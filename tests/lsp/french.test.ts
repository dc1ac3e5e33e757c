import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import type { CodeAction, CodeLens, CompletionItem, Hover, InlayHint } from 'vscode-languageserver-protocol';
import { type Editor, editorsOfTests } from './editor.ts';

const bundle: unknown = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../client/l10n/bundle.l10n.fr.json'), 'utf8'),
);

const uri = 'file:///wells/kestrel-hollow.well';
const textDocument = { uri };
const log = [
  'units m mm',
  'hole',
  '  0 - 7.2  254',
  'strata',
  '  0 - 3.8  clay',
  '  - 9  limestone',
  'casing  0 - 7.2  steel 168.3 x 6.4',
  '  grout 0 - 7.2 neat cement, 0.29 m3',
  '',
].join('\n');

const startEditor = editorsOfTests();

/** An editor that tells its language by these options, with the log open. */
async function started(options: unknown): Promise<Editor> {
  const editor = startEditor();
  await editor.begin(undefined, options);
  await editor.open(uri, log);
  return editor;
}

const whole = { start: { line: 0, character: 0 }, end: { line: 8, character: 0 } };

const messagesIn = async (editor: Editor): Promise<unknown[]> =>
  (await editor.report(uri, 1)).diagnostics.map(({ message }) => message);

const titlesIn = async (editor: Editor): Promise<string[]> => {
  const { diagnostics } = await editor.report(uri, 1);
  const actions = await editor.request<CodeAction[]>('textDocument/codeAction', {
    textDocument,
    range: whole,
    context: { diagnostics },
  });
  return actions.map(({ title }) => title);
};

const lensesIn = async (editor: Editor): Promise<(string | undefined)[]> =>
  (await editor.request<CodeLens[]>('textDocument/codeLens', { textDocument })).map(({ command }) => command?.title);

test('a server that is given French answers in French', async () => {
  const editor = await started({ l10n: bundle });
  expect(await messagesIn(editor)).toContainEqual(expect.stringMatching(/^aucun sabot/));
  expect(await titlesIn(editor)).toContain('Permettre missing-shoe sur cette ligne (donner la raison)');
  expect(await lensesIn(editor)).toContain('2 couches · jusqu’à 9 m');
  const hints = await editor.request<InlayHint[]>('textDocument/inlayHint', { textDocument, range: whole });
  expect(hints.map(({ label }) => label)).toContainEqual(expect.stringMatching(/^requis /));
  const about = await editor.request<Hover>('textDocument/hover', {
    textDocument,
    position: { line: 3, character: 2 },
  });
  expect(JSON.stringify(about.contents)).toContain('le terrain, par profondeur');
  const list = await editor.request<{ items: CompletionItem[] }>('textDocument/completion', {
    textDocument,
    position: { line: 8, character: 0 },
  });
  expect(list.items.find(({ label }) => label === 'water')?.detail).toBe('eau rencontrée, niveaux, qualité');
});

test('a server that is given no texts answers in English', async () => {
  const editor = await started({ pages: true });
  expect(await lensesIn(editor)).toContain('2 layers · down to 9 m');
  expect(await titlesIn(editor)).toContain('Allow missing-shoe on this line (give the reason)');
});
