import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { getLanguageService, type JSONSchema, TextDocument } from 'vscode-json-languageservice';
import { limitsFor, packs } from '../../server/packs/index.ts';
import { readPack } from '../../server/packs/read-pack.ts';
import { packSchema } from '../../server/packs/schema.ts';
import { readOwnPack } from '../../server/rules/own-pack.ts';

const figure = { value: 0.6, unit: 'm', text: '60 cm', source: 'made up', known: 'read', date: null };
const fen = { id: 'fen-1', title: 'Fen', notice: 'A help, not the law.', limits: { 'stickup-least': figure } };

/** `line:column message` of every problem, counted from 1. */
function problemsOf(text: string): string[] {
  const read = readOwnPack(text);
  if ('pack' in read) return [];
  return read.problems.map(({ offset, message }) => {
    const before = text.slice(0, offset).split('\n');
    return `${before.length}:${(before.at(-1) ?? '').length + 1} ${message}`;
  });
}

const written = (pack: object): string => JSON.stringify(pack, null, 1);

describe('a pack of the workspace', () => {
  test('is read, and completed with what it leaves out', () => {
    const read = readPack(written({ $schema: './pack.schema.json', ...fen }));
    if (!('pack' in read)) throw new Error(JSON.stringify(read.problems));
    expect(read.pack).toMatchObject({ state: 'current', cases: [], record: [], due: [], testReadings: null });
    expect(read.pack.limits['stickup-least']).toMatchObject({ value: 0.6, section: null, counted: null });
  });

  test('is in force under its name in any letter case', () => {
    const read = readPack(written(fen));
    const own = 'pack' in read ? [read.pack] : [];
    expect(limitsFor(['FEN-1'], undefined, own).limits['stickup-least']).toMatchObject({ value: 0.6, pack: 'fen-1' });
    expect(limitsFor(['FEN-1']).unknown).toEqual(['FEN-1']);
  });

  test.each(packs.map((pack) => [pack.id, pack] as const))('%s reads back as itself', (_, pack) => {
    expect(readOwnPack(JSON.stringify(pack))).toEqual({ pack });
  });
});

describe('a broken pack tells each fault at its place', () => {
  test.each([
    ['{"id": fen}', ['1:8 not JSON: fen is not a JSON value']],
    ['', ['1:1 not JSON: the text ends too soon']],
    [written({ ...fen, limts: {} }), ['15:2 not a rule pack at limts: there is no such key; did you mean limits?']],
    [
      written({ ...fen, limits: { 'stikup-least': figure } }),
      ['6:3 not a rule pack at limits.stikup-least: there is no such key; did you mean stickup-least?'],
    ],
    [
      written({ ...fen, cases: [{ limit: 'stickup-least', when: { rok: ['any'] }, ...figure }] }),
      ['19:5 not a rule pack at cases.0.when.rok: there is no such key; did you mean rock?'],
    ],
    [
      written({ ...fen, limits: { 'stickup-least': { ...figure, unit: 'in' } } }),
      ['8:12 not a rule pack at limits.stickup-least.unit: the value must be in m'],
    ],
  ])('%j', (text, problems) => {
    expect(problemsOf(text)).toEqual(problems);
  });

  test('a misspelt word of a list is told with the near ones', () => {
    const [problem] = problemsOf(
      written({ ...fen, record: [{ fact: 'ownr', text: '', source: '', known: 'read', date: null }] }),
    );
    expect(problem).toMatch(/at record\.0\.fact: .*; did you mean owner\?$/);
  });

  test('a term that the notation lacks is told with the near ones', () => {
    const dug = { limit: 'stickup-least', when: { placement: ['tremie', 'presure'] }, ...figure };
    const near = { from: ['barm'], least: 15, text: '', source: '', known: 'read', date: null };
    expect(problemsOf(written({ ...fen, cases: [dug], distances: [near] }))).toEqual([
      '21:6 not a rule pack at cases.0.when.placement.1: the notation has no such term; did you mean pressure?',
      '35:5 not a rule pack at distances.0.from.0: the notation has no such term; did you mean barn?',
    ]);
  });

  test('two faults are two problems', () => {
    expect(problemsOf(written({ ...fen, title: 3, notice: 4 })).map((each) => each.split(':')[0])).toEqual(['3', '4']);
  });

  test('no text makes it throw', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => 'problems' in readPack(text)));
  });
});

describe('the published schema', () => {
  const service = getLanguageService({});
  service.configure({ schemas: [{ uri: 'pack', fileMatch: ['*'], schema: packSchema() as JSONSchema }] });

  async function faultsOf(text: string): Promise<string[]> {
    const document = TextDocument.create('file:///fen.wellrules.json', 'json', 1, text);
    const found = await service.doValidation(document, service.parseJSONDocument(document));
    return found.map(({ message }) => String(message));
  }

  // vscode-json-languageservice is the editor's own reader of JSON Schema.
  test.each(packs.map((pack) => [pack.id, pack] as const))('accepts %s', async (_, pack) => {
    expect(await faultsOf(JSON.stringify(pack))).toEqual([]);
  });

  test('reports an unknown limit, and a value in another unit', async () => {
    expect(await faultsOf(written({ ...fen, limits: { stickup: figure } }))).toHaveLength(1);
    expect(await faultsOf(written({ ...fen, limits: { 'stickup-least': { ...figure, unit: 'in' } } }))).toHaveLength(1);
  });

  test('completes the names of limits with their meaning', async () => {
    const text = '{"limits": {""}}';
    const document = TextDocument.create('file:///fen.wellrules.json', 'json', 1, text);
    const at = document.positionAt(text.indexOf('""') + 1);
    const list = await service.doComplete(document, at, service.parseJSONDocument(document));
    const item = list?.items.find(({ label }) => label === 'stickup-least');
    expect(item?.documentation).toContain('height of the casing above ground');
  });
});
