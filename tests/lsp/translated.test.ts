import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type {
  ExportAnswer,
  ExportChoice,
  FolderWells,
  LogStatus,
  NewLogChoices,
  NotesAnswer,
  Preview,
} from '../../server/lsp/protocol.ts';
import { strangeTexts } from '../client/strange-language.ts';
import { type Editor, editorsOfTests } from './editor.ts';

const repository = path.join(import.meta.dirname, '../..');
const french = JSON.parse(readFileSync(path.join(repository, 'client/l10n/bundle.l10n.fr.json'), 'utf8'));
const samples = path.join(repository, 'samples');

const startEditor = editorsOfTests();
let editor: Editor;
let root: string;

/** An editor that speaks a language which is nobody's, with a folder of the samples open. */
beforeEach(async () => {
  root = mkdtempSync(path.join(tmpdir(), 'drillhand-words-'));
  for (const name of readdirSync(samples).filter((each) => each.endsWith('.well')))
    writeFileSync(path.join(root, name), readFileSync(path.join(samples, name)));
  writeFileSync(path.join(root, 'drillhand.json'), '{ "packs": ["no-such-pack"] }');
  editor = startEditor();
  await editor.beginIn(
    pathToFileURL(root).href,
    { workspace: { configuration: true, workspaceFolders: true } },
    { l10n: strangeTexts(Object.keys(french)) },
  );
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const addressOf = (name: string): string => pathToFileURL(path.join(root, name)).href;

/** Every one begins and ends in the guillemets of the strange language. */
const expectStrange = (texts: readonly string[]): void => {
  expect(texts.length).toBeGreaterThan(0);
  expect(texts.filter((text) => !/^«.*»$/s.test(text))).toEqual([]);
};

async function wells(): Promise<FolderWells> {
  let answer: FolderWells = { wells: [], isReading: true, note: null };
  while (answer.isReading || answer.wells.length === 0)
    answer = await editor.request<FolderWells>('drillhand/folder', undefined);
  return answer;
}

test('the wells of a folder are told in the language of the editor', async () => {
  const { wells: entries } = await wells();
  expect(entries.length).toBeGreaterThan(5);
  expectStrange(entries.flatMap(({ facts }) => facts.map(({ label }) => label)));
  expectStrange(entries.map(({ description }) => description.split(' · ').at(-1) ?? ''));
  expectStrange(entries.flatMap(({ tooltip }) => tooltip.split('\n').slice(1)));
  const values = entries.flatMap(({ facts }) => facts.filter(({ sign }) => sign !== 'depth' && sign !== 'place'));
  expect(values.map(({ value }) => value).join(' ')).not.toMatch(/\b(?:casing|tested|found|on|left|over)\b/);
});

test('what stands around the text, and what may be chosen, is told in it', async () => {
  const uri = addressOf('due.well');
  await editor.open(uri, 'rules montana-36-21\nfinished 2026-05-06\nstrata\n  0 - 4 clay\n');
  const status = await editor.request<LogStatus | null>('drillhand/logStatus', { textDocument: { uri } });
  expectStrange([status?.due?.what ?? '']);
  const choices = await editor.request<NewLogChoices>('drillhand/newLogChoices', undefined);
  expectStrange(choices.units.map(({ title }) => title));
  const formats = await editor.request<ExportChoice[]>('drillhand/exportFormats', undefined);
  expectStrange(formats.map(({ title }) => title));
  const preview = await editor.request<Preview | null>('drillhand/preview', { textDocument: { uri } });
  expectStrange(preview?.columns.map(({ title }) => title) ?? []);
});

test('what is refused, and what is wrong in the settings of a folder, is told in it', async () => {
  const textDocument = { uri: addressOf('nowhere.well') };
  const refused = await editor.request<ExportAnswer>('drillhand/export', { textDocument, format: 'json', name: 'x' });
  const notes = await editor.request<NotesAnswer>('drillhand/readNotes', { text: ' ', base64: null, options: {} });
  expectStrange([refused.reason ?? '', notes.reason ?? '']);
  const settings = addressOf('drillhand.json');
  await editor.until(() => editor.reports.some(({ uri }) => uri === settings), 'the settings of the folder');
  const [report] = editor.reports.filter(({ uri }) => uri === settings);
  expect(JSON.stringify(report?.diagnostics.map(({ message }) => message))).toContain('«');
});
