import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultSettings, readSettings, sameSettings, todayHere } from '../../server/lsp/settings.ts';

test('packs and severities are read', () => {
  const section = { rules: { packs: ['general'], severity: { 'interval-gap': 'off', 'missing-shoe': 'error' } } };
  expect(readSettings(section)).toEqual({
    packs: ['general'],
    severities: { 'interval-gap': 'off', 'missing-shoe': 'error' },
  });
});

test('what is of the wrong shape is left out', () => {
  const section = { rules: { packs: ['general', 7, null], severity: { a: 'loud', b: 'hint', c: {} } } };
  expect(readSettings(section)).toEqual({ packs: ['general'], severities: { b: 'hint' } });
});

test('anything at all can be read', () => {
  fc.assert(
    fc.property(fc.anything(), (section) => {
      expect(Array.isArray(readSettings(section).packs)).toBe(true);
      expect(Array.isArray(readSettings({ rules: section }).packs)).toBe(true);
    }),
  );
  expect(readSettings(null)).toEqual(defaultSettings);
});

test('the same settings are known as the same', () => {
  expect(sameSettings(readSettings({ rules: { packs: ['a'] } }), { packs: ['a'], severities: {} })).toBe(true);
  expect(sameSettings(readSettings({ rules: { packs: ['b'] } }), { packs: ['a'], severities: {} })).toBe(false);
});

test('today is the day of the wall calendar', () => {
  expect(todayHere(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
});
