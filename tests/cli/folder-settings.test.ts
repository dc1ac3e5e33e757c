import { describe, expect, test } from 'vitest';
import { drillhand, messages } from './fake-world.ts';
import { gapped, overlapping } from './logs.ts';

const limit = { value: 0.6, unit: 'm', text: '60 cm', source: 'made up', known: 'read', date: null };
const fenPack = (id: string): string =>
  JSON.stringify({ id, title: 'Fen', notice: 'A help, not the law.', limits: { 'stickup-least': limit } });
const low = (rules: string): string => `${rules}casing +0.4 - 30 pvc 114.3\n`;

const rulesIn = (output: string): string[] =>
  [...output.matchAll(/: (?:error|warning|information|hint) ([a-z-]+): /g)].map(([, id]) => id ?? '');

describe('a drillhand.json', () => {
  test('beside the log switches a rule off and gives another its severity', async () => {
    const settings = JSON.stringify({ rules: { 'interval-gap': 'error' } });
    const files = { 'logs/a.well': gapped, 'logs/drillhand.json': settings };
    const { code, output, errors } = await drillhand(['check', 'logs/a.well'], files);
    expect({ code, errors }).toEqual({ code: 1, errors: '' });
    expect(output).toContain('error interval-gap');
    const off = { ...files, 'logs/drillhand.json': '{"rules": {"interval-gap": "off"}}' };
    expect((await drillhand(['check', 'logs/a.well'], off)).output).toBe('no findings in 1 file\n');
  });

  test('above the log counts too, and of two the nearer alone', async () => {
    const files = { 'logs/deep/a.well': gapped, 'drillhand.json': '{"rules": {"interval-gap": "off"}}' };
    expect((await drillhand(['check', 'logs/deep/a.well'], files)).output).toBe('no findings in 1 file\n');
    const nearer = { ...files, 'logs/drillhand.json': '{}' };
    expect(rulesIn((await drillhand(['check', 'logs/deep/a.well'], nearer)).output)).toEqual(['interval-gap']);
  });

  test('names packs for every log below it', async () => {
    const files = { 'a.well': low(''), 'drillhand.json': '{"packs": ["montana-36-21"]}' };
    const { output } = await drillhand(['check', 'a.well'], files);
    expect(output).toMatch(/stickup-low: .*montana-36-21/);
  });

  test('switches a rule on that is off by itself', async () => {
    const neighbour = (at: number, level: number): string =>
      `place 44.531${at} -78.2064\nground 229.7 m\nwater\n  level ${level}\n`;
    const wells = {
      'a.well': neighbour(0, 31),
      'b.well': neighbour(1, 5),
      'c.well': neighbour(2, 5),
      'd.well': neighbour(3, 6),
    };
    const names = Object.keys(wells);
    const count = async (settings: string) =>
      rulesIn((await drillhand(['check', ...names], { ...wells, 'drillhand.json': settings })).output).filter(
        (id) => id === 'level-unlike-neighbours',
      ).length;
    expect(await count('{}')).toBe(0);
    expect(await count('{"rules": {"level-unlike-neighbours": "on"}}')).toBe(1);
  });

  test.each([
    ['an unknown key', '{"rule": {}}', '1:2: rule: there is no such key; did you mean rules?'],
    [
      'an unknown rule',
      '{\n "rules": {"mising-shoe": "off"}\n}',
      '2:12: rules.mising-shoe: there is no such key; did you mean missing-shoe?',
    ],
    ['an unknown severity', '{"rules": {"missing-shoe": "eror"}}', '1:28: rules.missing-shoe: '],
    [
      'an unknown pack',
      '{"packs": ["generl"]}',
      '1:12: packs.0: there is no rule pack "generl"; did you mean general?',
    ],
  ])('%s is told once with its place, and the rest counts', async (_, settings, message) => {
    const files = { 'a.well': gapped, 'b.well': overlapping, 'drillhand.json': settings };
    const { code, output, errors } = await drillhand(['check', 'a.well', 'b.well'], files);
    expect(errors.startsWith(`drillhand: drillhand.json:${message}`)).toBe(true);
    expect(messages(errors)).toBe(1);
    expect(code).toBe(1);
    expect(rulesIn(output)).toEqual(['interval-gap', 'interval-overlap']);
  });

  test.each([
    ['no JSON', '{"rules": }', '1:11: not JSON: not a JSON value'],
    ['a list', '[]', '1:1: '],
    ['packs that are no list', '{"packs": "general"}', '1:11: packs: '],
  ])('%s cannot be used: told once, and the program ends with 2', async (_, settings, message) => {
    const { code, output, errors } = await drillhand(['check', 'a.well'], {
      'a.well': gapped,
      'drillhand.json': settings,
    });
    expect(errors.startsWith(`drillhand: drillhand.json:${message}`)).toBe(true);
    expect(messages(errors)).toBe(1);
    expect(code).toBe(2);
    expect(rulesIn(output)).toEqual(['interval-gap']);
  });
});

describe('packs of the workspace', () => {
  test('beside the log, and up to the folder with the settings, are known by their ids', async () => {
    const beside = { 'logs/a.well': low('rules FEN-1\n'), 'logs/x.wellrules.json': fenPack('fen-1') };
    expect((await drillhand(['check', 'logs/a.well'], beside)).output).toMatch(/stickup-low: .*fen-1/);
    const above = { 'logs/a.well': low('rules fen-1\n'), 'x.wellrules.json': fenPack('fen-1'), 'drillhand.json': '{}' };
    expect((await drillhand(['check', 'logs/a.well'], above)).output).toMatch(/stickup-low: .*fen-1/);
  });

  test('beyond the settings, or above a log without any, are not', async () => {
    const files = { 'logs/a.well': low('rules fen-1\n'), 'x.wellrules.json': fenPack('fen-1') };
    for (const more of [{}, { 'logs/drillhand.json': '{}' }])
      expect(rulesIn((await drillhand(['check', 'logs/a.well'], { ...files, ...more })).output)).toContain(
        'unknown-pack',
      );
  });

  test('may be named by the settings', async () => {
    const files = { 'a.well': low(''), 'x.wellrules.json': fenPack('fen-1'), 'drillhand.json': '{"packs": ["fen-1"]}' };
    expect((await drillhand(['check', 'a.well'], files)).output).toMatch(/stickup-low: .*fen-1/);
  });

  test('a broken one is told at its place, the log that names it has one finding, and the rest goes on', async () => {
    const files = { 'a.well': `rules fen-1\n${gapped}`, 'x.wellrules.json': '{\n "id": "fen-1",\n "title": 3\n}' };
    const { code, output, errors } = await drillhand(['check', 'a.well'], files);
    expect(errors).toMatch(/^drillhand: x\.wellrules\.json:3:11: not a rule pack at title: .*\n/);
    expect(rulesIn(output)).toEqual(['unknown-pack', 'interval-gap']);
    expect(output).toContain('"fen-1" cannot be read, so its limits are not checked: x.wellrules.json:3:11: ');
    expect(code).toBe(1);
  });

  test('one with the id of a pack of the program takes its place and is told', async () => {
    const files = { 'a.well': low('rules general\n'), 'x.wellrules.json': fenPack('general') };
    const { output, errors } = await drillhand(['check', 'a.well'], files);
    expect(errors).toContain('"general" is also a pack of the program');
    expect(output).toMatch(/stickup-low: .*60 cm/);
  });
});

describe('several logs together', () => {
  test('the same well id is reported in both, each with the place in the other', async () => {
    const files = { 'a.well': 'well KH-3\n', 'b.well': '# second\nwell kh-3\n' };
    const { code, output } = await drillhand(['check', 'a.well', 'b.well'], files);
    expect(rulesIn(output)).toEqual(['well-id-twice', 'well-id-twice']);
    expect(output).toMatch(/^a\.well:1:6: warning well-id-twice: the well id KH-3 is also in b\.well/m);
    expect(output).toContain('      = b.well:2:6: kh-3 in b.well');
    expect(code).toBe(0);
  });

  test('the JSON and SARIF reports name the other file', async () => {
    const files = { 'a.well': 'tag F 1\n', 'b.well': 'tag F 1\n' };
    const json = JSON.parse((await drillhand(['check', 'a.well', 'b.well', '--format', 'json'], files)).output);
    expect(json[0].findings[0].related[0]).toMatchObject({ file: 'b.well' });
    const sarif = JSON.parse((await drillhand(['check', 'a.well', 'b.well', '--format', 'sarif'], files)).output);
    const [result] = sarif.runs[0].results;
    expect(result.ruleId).toBe('tag-twice');
    expect(sarif.runs[0].tool.driver.rules[result.ruleIndex].id).toBe('tag-twice');
    expect(result.relatedLocations[0].physicalLocation.artifactLocation.uri).toBe('b.well');
  });

  test('one log alone has none', async () => {
    expect((await drillhand(['check', 'a.well'], { 'a.well': 'well KH-3\n', 'b.well': 'well KH-3\n' })).output).toBe(
      'no findings in 1 file\n',
    );
  });
});
