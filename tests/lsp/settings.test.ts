import fc from 'fast-check';
import { expect, test } from 'vitest';
import { showsAll } from '../../server/features/shows.ts';
import { defaultSettings, readSettings, sameSettings, todayHere } from '../../server/lsp/settings.ts';

test('packs and severities are read', () => {
  const section = { rules: { packs: ['general'], severity: { 'interval-gap': 'off', 'missing-shoe': 'error' } } };
  expect(readSettings(section)).toMatchObject({
    packs: ['general'],
    severities: { 'interval-gap': 'off', 'missing-shoe': 'error' },
  });
});

test('what is of the wrong shape is left out', () => {
  const section = { rules: { packs: ['general', 7, null], severity: { a: 'loud', b: 'hint', c: {} } } };
  expect(readSettings(section)).toMatchObject({ packs: ['general'], severities: { b: 'hint' } });
});

test('what is shown beside the text is on until it is switched off', () => {
  expect(readSettings({ rules: {} }).shows).toEqual(showsAll);
  expect(readSettings({ inlayHints: { units: false, thickness: 'no' }, codeLens: { totals: false } }).shows).toEqual({
    inlayHints: { ...showsAll.inlayHints, units: false },
    codeLens: false,
  });
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
  expect(sameSettings(readSettings({ rules: { packs: ['a'] } }), { ...defaultSettings, packs: ['a'] })).toBe(true);
  expect(sameSettings(readSettings({ rules: { packs: ['b'] } }), { ...defaultSettings, packs: ['a'] })).toBe(false);
});

test('today is the day of the wall calendar', () => {
  expect(todayHere(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
});
