import * as l10n from '@vscode/l10n';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { faultIn, readNotes } from '../../server/import/index.ts';
import { strangeBundle } from '../client/strange-language.ts';
import { cases } from './cases.ts';

beforeAll(() => l10n.config({ contents: strangeBundle }));
afterAll(() => l10n.config({ contents: {} }));

/** Everything that reading some notes says of them. */
function saidOf(notes: string, options: Parameters<typeof readNotes>[1]): string[] {
  const { entries, questions, troubles } = readNotes(notes, options);
  return [...entries.flatMap(({ why }) => why), ...[...questions, ...troubles].map(({ says }) => says)];
}

test('in a window of another language nothing that is said of notes is English', () => {
  const said = cases.flatMap(({ notes, options }) => [...saidOf(notes, options), ...saidOf(notes, {})]);
  expect(new Set(said).size).toBeGreaterThan(20);
  expect(said.filter((text) => !/^«[^»]*(?:«[^»]*»[^»]*)*»$/.test(text))).toEqual([]);
});

test.each([
  ['casing', 'casing 0 - 20 40 L/min'],
  ['strata', 'silt 12 13 14'],
  ['casing', 'dry'],
] as const)('nor is what is told of a changed line of %s: %s', (part, text) => {
  expect(faultIn(part, text)).toMatch(/^«.*»$/);
});
