import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkFolder } from '../../server/folder/check-folder.ts';
import { folderRules } from '../../server/rules/folder/index.ts';
import type { FolderExample, FolderRule } from '../../server/rules/folder/rule.ts';
import { rules } from '../../server/rules/index.generated.ts';
import type { Finding } from '../../server/rules/rule.ts';
import { wellsOf } from '../folder/wells.ts';
import { readMarked } from './marked.ts';

const unmarked = (example: FolderExample): Record<string, string> =>
  Object.fromEntries(Object.entries(example).map(([name, text]) => [name, readMarked(text).text]));

function findingsOf(rule: FolderRule, example: FolderExample): Record<string, readonly Finding[]> {
  const found = checkFolder(wellsOf(unmarked(example)), () => ({ [rule.id]: rule.severity }), [rule]);
  return Object.fromEntries(Object.keys(example).map((name) => [name, found.get(name) ?? []]));
}

const spansOf = (findings: readonly Finding[]) =>
  findings.map(({ span: { line, start, end } }) => ({ line, start, end }));

const shortly = (example: FolderExample): string => JSON.stringify(example).slice(0, 80);

test('every file of a folder rule is in the index, and no id is that of another rule', () => {
  const files = readdirSync(path.resolve('server/rules/folder/rules')).map((name) => name.replace(/\.ts$/, ''));
  expect(folderRules.map(({ id }) => id)).toEqual(files.sort());
  expect(rules.map(({ id }) => id).filter((id) => files.includes(id))).toEqual([]);
});

describe.each(folderRules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test('says what it looks for, why, how to mend it and where it comes from', () => {
    for (const words of [rule.title, rule.why, rule.mend, rule.source]) expect(words.trim()).not.toBe('');
    expect(rule.flagged.length).toBeGreaterThan(0);
    expect(rule.silent.length).toBeGreaterThan(0);
  });

  test.each(rule.flagged.map((example) => [shortly(example), example] as const))('reports: %s', (_name, example) => {
    const found = findingsOf(rule, example);
    for (const [name, text] of Object.entries(example))
      expect(spansOf(found[name] ?? []), name).toEqual(readMarked(text).spans);
  });

  test.each(rule.silent.map((example) => [shortly(example), example] as const))('is silent: %s', (_name, example) => {
    expect(Object.values(findingsOf(rule, example)).flat()).toEqual([]);
  });
});
