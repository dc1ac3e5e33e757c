import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as l10n from '@vscode/l10n';
import { afterEach, describe, expect, test } from 'vitest';
import { checkFolder } from '../../server/folder/check-folder.ts';
import { folderRules } from '../../server/rules/folder/index.ts';
import type { FolderExample, FolderRule } from '../../server/rules/folder/rule.ts';
import { strangeBundle } from '../client/strange-language.ts';
import { wellsOf } from '../folder/wells.ts';
import { readMarked } from './marked.ts';

const french: { [text: string]: string } = JSON.parse(
  readFileSync(path.resolve(import.meta.dirname, '../../client/l10n/bundle.l10n.fr.json'), 'utf8'),
);

/** What a rule says of a folder, at the places of other wells too. */
function wordsOf(rule: FolderRule, example: FolderExample): string[] {
  const texts = Object.entries(example).map(([name, text]) => [name, readMarked(text).text]);
  const found = checkFolder(wellsOf(Object.fromEntries(texts)), () => ({ [rule.id]: rule.severity }), [rule]);
  return [...found.values()]
    .flat()
    .flatMap(({ message, related = [] }) => [message, ...related.map((each) => each.message)]);
}

/** Words of three letters or more that do not stand in the example or its names of files. */
function foreignTo(example: FolderExample, words: string): string[] {
  const own = new Set(JSON.stringify(example).match(/[A-Za-z]+/g));
  return (words.match(/[A-Za-z]{3,}/g) ?? []).filter((word) => !own.has(word));
}

afterEach(() => l10n.config({ contents: {} }));

describe.each(folderRules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test('says nothing in English in a window of another language', () => {
    l10n.config({ contents: strangeBundle });
    const said = rule.flagged.flatMap((example) => wordsOf(rule, example).map((words) => ({ words, example })));
    expect(said.length).toBeGreaterThan(0);
    expect(said.map(({ words }) => words).filter((words) => !words.startsWith('«'))).toEqual([]);
    expect(said.flatMap(({ words, example }) => foreignTo(example, words))).toEqual([]);
  });
});

test('names the others that share a text in French', () => {
  l10n.config({ contents: french });
  const tagTwice = folderRules.filter(({ id }) => id === 'tag-twice');
  const logs = ['a', 'b', 'c', 'd'].map((name) => [`${name}.well`, 'tag [[F 20619]]'] as const);
  const messages = (count: number) =>
    tagTwice.flatMap((rule) => wordsOf(rule, Object.fromEntries(logs.slice(0, count))));
  const said = (others: string) =>
    `la plaque F 20619 figure aussi dans ${others}; la lire sur le tubage et corriger l’un des journaux`;
  expect(messages(2)[0]).toBe(said('b.well'));
  expect(messages(3)[0]).toBe(said('b.well et c.well'));
  expect(messages(4)[0]).toBe(said('b.well et 2 autres'));
});
