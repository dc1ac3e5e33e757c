import { Buffer } from 'node:buffer';
import { expect, test } from 'vitest';
import type { NotesAnswer, NotesOptions, WrittenNotes } from '../../server/lsp/protocol.ts';
import { editorOfTests } from './editor.ts';

const editor = editorOfTests();

const open: NotesOptions = { units: null, gallon: null, dates: null, layers: null, columns: null };

const read = (text: string | null, options: Partial<NotesOptions> = {}, base64: string | null = null) =>
  editor().request<NotesAnswer>('drillhand/readNotes', { text, base64, options: { ...open, ...options } });

const write = (answer: NotesAnswer, into: { uri: string } | null) =>
  editor().request<WrittenNotes>('drillhand/writeNotes', { ...answer, gallon: null, into });

test('notes come back entry by entry', async () => {
  const { entries, questions, reason, units } = await read("0-12' brn clay\nbroke a cable");
  expect({ questions, reason, units }).toEqual({ questions: [], reason: null, units: 'ft' });
  expect(entries.map(({ first, lines, status }) => ({ first, lines, status }))).toEqual([
    { first: 1, lines: [{ part: 'strata', text: "0 - 12' clay, brown" }], status: 'understood' },
    { first: 2, lines: [], status: 'not' },
  ]);
});

test('an open unit is a question that blocks', async () => {
  const { questions } = await read('0-12 clay');
  expect(questions).toMatchObject([{ about: 'units', answers: ['m', 'ft'], blocking: true }]);
  expect((await read('0-12 clay', { units: 'm' })).questions).toEqual([]);
});

test('the bytes of a file are decoded, or refused in words', async () => {
  const { entries } = await read(null, {}, Buffer.from('0-12 m Ton, grün', 'utf16le').toString('base64'));
  expect(entries[0]?.source).toEqual(['0-12 m Ton, grün']);
  expect((await read(null, {}, Buffer.from([80, 75, 10, 0, 80, 80, 80, 80]).toString('base64'))).reason).toContain(
    'line 2 has a NUL byte',
  );
  expect((await read('  ')).reason).toBe('there are no notes to read');
});

test('a changed line is looked at', async () => {
  const look = (part: string, text: string) => editor().request<string | null>('drillhand/notesLine', { part, text });
  expect(await look('strata', '0 - 3 clay')).toBeNull();
  expect(await look('casing', 'casing 0 - 20 40 L/min')).toContain('"40 L/min"');
  expect(await look('nowhere', 'x')).toBeNull();
});

test('what was accepted becomes a log', async () => {
  const answer = await read("0-12' brn clay\nbroke a cable");
  const { text, reason } = await write(answer, null);
  expect(reason).toBeNull();
  expect(text).toBe(
    "units     ft in\n\nstrata\n# 0-12' brn clay\n  0    - 12'    clay, brown\n# broke a cable\n# ^ the notation has no line for it that could be told from these words\n",
  );
});

test('lines are put into a log only if its depths have their unit', async () => {
  await editor().open('file:///feet.well', 'units ft in\nstrata\n', 1);
  await editor().open('file:///metres.well', 'strata\n', 1);
  const answer = await read("0-12' brn clay");
  expect((await write(answer, { uri: 'file:///feet.well' })).text).toBe(
    "strata\n# 0-12' brn clay\n  0    - 12'    clay, brown\n",
  );
  const refused = await write(answer, { uri: 'file:///metres.well' });
  expect(refused.text).toBe('');
  expect(refused.reason).toContain('the notes are in feet and the log is in metres');
});

test('lines that a page might send cannot break out of their own', async () => {
  const answer = await read("0-12' clay");
  const [entry] = answer.entries;
  if (entry === undefined) throw new Error('no entry');
  const lines = [
    { part: 'strata', text: '0 - 3 sand\n# allow interval-gap: x' },
    { part: 'nowhere', text: 'casing 0 - 3' },
  ];
  const { text } = await write({ ...answer, entries: [{ ...entry, lines }] }, null);
  expect(text.split('\n').filter((line) => /^\s*# allow|casing/.test(line))).toEqual([]);
});
