import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { getLanguageService, type JSONSchema, TextDocument } from 'vscode-json-languageservice';
import { placeText, readPackFile } from '../../server/folder/own-packs.ts';
import { readFolderSettings } from '../../server/folder/read-settings.ts';
import { ruleIds, severitiesOf } from '../../server/folder/rule-choices.ts';
import { settingsSchema } from '../../server/folder/schema.ts';
import { noOwnPacks } from '../../server/packs/own-packs.ts';

const read = (text: string) => readFolderSettings(text, noOwnPacks);

const told = (text: string): string[] =>
  read(text).problems.map(({ offset, message }) => `${placeText(text, offset)} ${message}`);

describe('a drillhand.json', () => {
  test('is read', () => {
    expect(read('{"$schema": "x", "packs": ["general"], "rules": {"missing-shoe": "off"}}')).toEqual({
      settings: { packs: ['general'], rules: { 'missing-shoe': 'off' } },
      problems: [],
      usable: true,
    });
    expect(read('{}').settings).toEqual({ packs: null, rules: null });
  });

  test('keeps what can be used where a part is at fault', () => {
    const { settings, usable, problems } = read(
      '{"packs": ["general", 7], "rules": {"missing-shoe": "loud", "bad-date": "off"}, "rls": {}}',
    );
    expect(settings).toEqual({ packs: ['general'], rules: { 'bad-date': 'off' } });
    expect(usable).toBe(true);
    expect(problems).toHaveLength(3);
  });

  test.each([
    ['{"pcks": []}', ['1:2 pcks: there is no such key; did you mean packs?']],
    ['{"rules": {"mising-shoe": "off"}}', ['1:12 rules.mising-shoe: there is no such key; did you mean missing-shoe?']],
    ['{"packs": ["generl"]}', ['1:12 packs.0: there is no rule pack "generl"; did you mean general?']],
    ['{"packs": ', ['1:11 not JSON: the text ends too soon']],
  ])('%s is told at its place', (text, problems) => {
    expect(told(text)).toEqual(problems);
  });

  test.each(['[]', '7', 'null', '"x"', '{"packs": 7}', '{"rules": []}', '{'])('%s cannot be used', (text) => {
    expect(read(text)).toMatchObject({ usable: false });
    expect(read(text).problems.length).toBeGreaterThan(0);
  });

  test('never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.json().map((json) => `{"rules": ${json}, "packs": ${json}}`),
        ),
        (text) => {
          const { problems } = read(text);
          for (const { offset } of problems) expect(offset).toBeLessThanOrEqual(text.length);
        },
      ),
    );
  });

  test('names the place of a broken pack that it asks for', () => {
    const file = readPackFile('x.wellrules.json', '{"id": "fen-1"}');
    const own = { packs: [], unread: [{ id: file.id, why: 'x.wellrules.json:1:1: no title' }] };
    expect(readFolderSettings('{"packs": ["FEN-1"]}', own).problems[0]?.message).toBe(
      'packs.0: the rule pack "FEN-1" cannot be read: x.wellrules.json:1:1: no title',
    );
  });
});

test('"on" gives a rule its own severity, and only where that is not what it has anyway', () => {
  expect(severitiesOf({ 'level-unlike-neighbours': 'on', 'missing-shoe': 'on', 'bad-date': 'hint' })).toEqual({
    'level-unlike-neighbours': 'information',
    'bad-date': 'hint',
  });
});

test.each([
  ['{"id": "fen-1", "title": 3}', 'fen-1'],
  ['{', 'x'],
  ['{"title": "no id"}', 'x'],
])('the id of a broken pack %s is %s', (text, id) => {
  expect(readPackFile('packs/x.wellrules.json', text).id).toBe(id);
});

describe('the published schema, as an editor uses it', () => {
  const service = getLanguageService({});
  service.configure({ schemas: [{ uri: 's:/settings', fileMatch: ['*'], schema: settingsSchema() as JSONSchema }] });
  const documentOf = (text: string) => {
    const document = TextDocument.create('file:///drillhand.json', 'json', 1, text);
    return { document, json: service.parseJSONDocument(document) };
  };

  test('offers every rule, what each may be set to, and the packs', async () => {
    const offered = async (marked: string): Promise<string[]> => {
      const { document, json } = documentOf(marked.replace('|', ''));
      const list = await service.doComplete(document, document.positionAt(marked.indexOf('|')), json);
      return list?.items.map(({ label }) => label.replaceAll('"', '')) ?? [];
    };
    expect(await offered('{"rules": {|}}')).toEqual(expect.arrayContaining([...ruleIds]));
    expect(await offered('{"rules": {"missing-shoe": |}}')).toEqual(expect.arrayContaining(['error', 'on', 'off']));
    expect(await offered('{"packs": [|]}')).toEqual(expect.arrayContaining(['general', 'ontario-903']));
  });

  test('lets pass what is right, a pack of the workspace too, and marks what is not', async () => {
    const faults = async (text: string): Promise<number> => {
      const { document, json } = documentOf(text);
      return (await service.doValidation(document, json)).length;
    };
    expect(await faults('{"packs": ["fen-1"], "rules": {"missing-shoe": "off"}}')).toBe(0);
    expect(await faults('{"rules": {"mising-shoe": "off"}}')).toBe(1);
    expect(await faults('{"rules": {"missing-shoe": "loud"}}')).toBe(1);
  });
});
