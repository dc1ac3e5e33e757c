import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import type { ExportAnswer } from '../../server/lsp/protocol.ts';
import { type Editor, editorsOfTests } from './editor.ts';

const french: unknown = JSON.parse(
  readFileSync(path.resolve(import.meta.dirname, '../../client/l10n/bundle.l10n.fr.json'), 'utf8'),
);

const uri = 'file:///wells/basalt-rill.well';
/* An annulus of 0.205 m³ by geometry, with 0.1 m³ placed. */
const log =
  'hole\n  0 - 7.2 254\n  - 61 152\ncasing +0.45 - 7.2 steel 168.3 x 6.4\n  shoe 7.2\n  grout 0 - 7.2 neat cement, 0.1 m3';

const startEditor = editorsOfTests();

/** An editor with the log open, begun with these options. */
async function editorWith(options: unknown): Promise<Editor> {
  const editor = startEditor();
  await editor.begin(undefined, options);
  await editor.open(uri, log);
  return editor;
}

async function groutMessage(editor: Editor, version = 1): Promise<string> {
  const { diagnostics } = await editor.report(uri, version);
  return `${diagnostics.find(({ code }) => code === 'grout-short')?.message}`;
}

const exported = (editor: Editor, format: string): Promise<ExportAnswer> =>
  editor.request('drillhand/export', { textDocument: { uri }, format, name: 'basalt-rill' });

const inEnglish = 'grout 0 – 7.2 m: 0.1 m³ placed, but the annulus alone holds 0.205 m³ (254 mm hole, 168.3 mm casing)';

test('findings and their fixes are worded in the language that the editor speaks', async () => {
  const editor = await editorWith({ l10n: french });
  expect(await groutMessage(editor)).toBe(
    'coulis 0 – 7.2 m\u00a0: 0.1 m³ mis en place, mais l’espace annulaire à lui seul contient 0.205 m³ (trou de 254 mm, tubage de 168.3 mm)\u00a0: une partie en reste vide; consigner ce qui a été pompé de plus, ou marquer le volume d’un ? pour demander à l’équipe',
  );
  const { diagnostics } = await editor.report(uri, 1);
  const actions = await editor.request<readonly { title: string }[]>('textDocument/codeAction', {
    textDocument: { uri },
    range: { start: { line: 5, character: 30 }, end: { line: 5, character: 30 } },
    context: { diagnostics: diagnostics.filter(({ code }) => code === 'grout-short') },
  });
  expect(actions.map(({ title }) => title)).toContain(
    'Marquer 0.1 m3 comme douteux, pour poser la question à l’équipe',
  );
});

test('a record for others is in English whatever the editor speaks, and its findings are not afterwards', async () => {
  const [spoken, plain] = [await editorWith({ l10n: french }), await editorWith(null)];
  for (const format of ['html', 'csv', 'json', 'svg']) {
    const answer = await exported(spoken, format);
    expect(answer, format).toEqual(await exported(plain, format));
    if (format === 'html') expect(answer.files[0]?.text).toContain(inEnglish);
  }
  await spoken.change(uri, 2, [{ text: `${log}\n` }]);
  expect(await groutMessage(spoken, 2)).toMatch(/^coulis 0/);
});

test.each([
  ['a list', ['a', 'b']],
  ['texts that are none', { 'the string': 7 }],
])('%s in place of the texts is left out, and told', async (_, broken) => {
  const editor = await editorWith({ l10n: broken });
  expect(await groutMessage(editor)).toContain(inEnglish);
  expect(editor.logged.join('\n')).toContain('the option l10n must give texts by their English');
});
