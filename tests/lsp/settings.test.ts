import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { showsAll } from '../../server/features/shows.ts';
import { noFolderSettings } from '../../server/folder/folder-settings.ts';
import type { RuleChoices } from '../../server/folder/rule-choices.ts';
import {
  defaultSettings,
  packTroubles,
  readSettings,
  sameSettings,
  settingsFor,
  todayHere,
} from '../../server/lsp/settings.ts';
import { noOwnPacks } from '../../server/packs/own-packs.ts';

const today = '2026-12-31';
const beside = (settings = noFolderSettings) => ({ settings, own: noOwnPacks });
const withRules = (packs: readonly string[] | null, rules: RuleChoices | null) => beside({ packs, rules });

test('packs and severities are read', () => {
  const section = { rules: { packs: ['general'], severity: { 'interval-gap': 'off', 'missing-shoe': 'error' } } };
  expect(readSettings(section)).toEqual({
    packs: ['general'],
    rules: { 'interval-gap': 'off', 'missing-shoe': 'error' },
    shows: showsAll,
    troubles: [],
  });
});

test('what is of the wrong shape is left out and told', () => {
  const section = { rules: { packs: ['general', 7, null], severity: { 'missing-shoe': 'loud', 'bad-date': 'hint' } } };
  expect(readSettings(section)).toMatchObject({ packs: ['general'], rules: { 'bad-date': 'hint' } });
  expect(readSettings(section).troubles).toEqual([
    'drillhand.rules.severity, missing-shoe: there is no severity "loud"',
  ]);
});

test('what nobody knows is told with near names', () => {
  const section = { rules: { pcks: [], packs: ['generl'], severity: { 'mising-shoe': 'eror' } } };
  const settings = readSettings(section);
  expect([...settings.troubles, ...packTroubles(settings, noOwnPacks)]).toEqual([
    'drillhand.rules: there is no setting "pcks"; did you mean packs?',
    'drillhand.rules.severity: there is no rule "mising-shoe"; did you mean missing-shoe?',
    'drillhand.rules.severity, mising-shoe: there is no severity "eror"; did you mean error?',
    'drillhand.rules.packs: there is no rule pack "generl"; did you mean general?',
  ]);
});

test('anything at all can be read', () => {
  fc.assert(
    fc.property(fc.anything(), (section) => {
      expect(Array.isArray(readSettings(section).packs)).toBe(true);
      expect(Array.isArray(readSettings({ rules: section }).packs)).toBe(true);
      expect(Array.isArray(readSettings({ rules: { severity: section } }).troubles)).toBe(true);
    }),
  );
  expect(readSettings(null)).toEqual(defaultSettings);
});

describe('a drillhand.json and the settings of the editor', () => {
  const user = readSettings({ rules: { packs: ['general'], severity: { 'missing-shoe': 'hint', 'bad-date': 'off' } } });

  test('without a file, the editor speaks', () => {
    expect(settingsFor(user, beside(), today)).toEqual({
      packs: ['general'],
      severities: { 'missing-shoe': 'hint', 'bad-date': 'off' },
      today,
      own: noOwnPacks,
    });
  });

  test('the file comes first, rule by rule and for the packs as a whole', () => {
    const { packs, severities } = settingsFor(user, withRules(['maine-232'], { 'missing-shoe': 'error' }), today);
    expect({ packs, severities }).toEqual({
      packs: ['maine-232'],
      severities: { 'missing-shoe': 'error', 'bad-date': 'off' },
    });
  });

  test('"on" in the file gives a rule its own severity back', () => {
    const { severities } = settingsFor(
      user,
      withRules(null, { 'bad-date': 'on', 'level-unlike-neighbours': 'on' }),
      today,
    );
    expect(severities).toEqual({ 'missing-shoe': 'hint', 'level-unlike-neighbours': 'information' });
  });

  test('are known as the same where they say the same', () => {
    const a = settingsFor(user, beside(), today);
    expect(sameSettings(a, settingsFor(user, withRules(['general'], null), today))).toBe(true);
    expect(sameSettings(a, settingsFor(user, withRules([], null), today))).toBe(false);
  });
});

test('today is the day of the wall calendar', () => {
  expect(todayHere(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
});
