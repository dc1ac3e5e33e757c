import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import type { ClientCapabilities, Diagnostic, Hover } from 'vscode-languageserver-protocol';
import type { QuestionsAnswer } from '../../server/lsp/protocol.ts';
import { type Editor, editorsOfTests } from './editor.ts';

const uri = 'file:///wells/basalt-rill.well';
const log =
  'rules oregon-690-210\nunits ft in\nowner ?\ncasing +1.5 - 60 steel 6.625 x 0.25\n  grout 0 - 15 neat cement';

const withLinks: ClientCapabilities = { textDocument: { publishDiagnostics: { codeDescriptionSupport: true } } };

const startEditor = editorsOfTests();
let editor: Editor;

async function reported(capabilities: ClientCapabilities): Promise<readonly Diagnostic[]> {
  editor = startEditor();
  await editor.begin(capabilities);
  await editor.open(uri, log);
  return (await editor.report(uri, 1)).diagnostics;
}

const codeOf = (diagnostics: readonly Diagnostic[], code: string): Diagnostic | undefined =>
  diagnostics.find((each) => each.code === code);

test('the code of a finding leads to the section of the pack, where that is public', async () => {
  const short = codeOf(await reported(withLinks), 'seal-shorter-than-pack');
  expect(short?.codeDescription?.href).toBe('https://oregon.public.law/rules/oar_690-210-0150');
  expect(short?.message).toContain('690-210-0150(1)(a)(C)');
});

test('an editor that shows no links is sent none, nor a page that it does not have', async () => {
  for (const each of await reported({})) expect(each.codeDescription).toBeUndefined();
  await editor.stop();
  expect(codeOf(await reported(withLinks), 'unresolved-question')?.codeDescription).toBeUndefined();
});

test('hover on a finding quotes the section, says what is not certain, and links to it', async () => {
  await reported(withLinks);
  const hover = (await editor.connection.sendRequest('textDocument/hover', {
    textDocument: { uri },
    position: { line: 4, character: 13 },
  })) as Hover | null;
  const text = JSON.stringify(hover);
  expect(text).toContain('Limit of `oregon-690-210`: 5 ft into clay or rock below 13 ft');
  expect(text).toContain('not certain: the five feet');
  expect(text).toContain('[Read the section](https://oregon.public.law/rules/oar_690-210-0150)');
});

test('the questions for the crew come as text, and as null for a log that is not open', async () => {
  await reported(withLinks);
  const ask = (at: string) =>
    editor.connection.sendRequest('drillhand/questions', {
      textDocument: { uri: at },
    }) as Promise<QuestionsAnswer | null>;
  const answer = await ask(uri);
  expect(answer?.count).toBe((answer?.text.match(/^\d+\. /gm) ?? []).length);
  expect(answer?.text).toContain('1. Owner\n   Written: owner ?  (line 3)');
  expect(await ask('file:///wells/gone.well')).toBeNull();
});

test('the questions come in the language that the editor speaks', async () => {
  const french: unknown = JSON.parse(
    readFileSync(path.resolve(import.meta.dirname, '../../client/l10n/bundle.l10n.fr.json'), 'utf8'),
  );
  editor = startEditor();
  await editor.begin(undefined, { l10n: french });
  await editor.open(uri, log);
  const answer = await editor.request<QuestionsAnswer>('drillhand/questions', { textDocument: { uri } });
  expect(answer.text).toContain(
    '1. Propriétaire\n   Écrit\u00a0: owner ?  (ligne 3)\n   Non noté\u00a0: propriétaire.\n',
  );
  expect(answer.text).toContain('Qu’a-t-on mis autour du tubage, et de quelle profondeur à quelle profondeur?');
});
