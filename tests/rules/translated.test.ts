import * as l10n from '@vscode/l10n';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { termLists } from '../../grammar/terms/index.ts';
import { rules } from '../../server/rules/index.generated.ts';
import type { Example, Finding, Rule, Severity } from '../../server/rules/rule.ts';
import { strangeBundle } from '../client/strange-language.ts';
import { contextOf, findingsIn } from './checked.ts';
import { readMarked } from './marked.ts';

const switchedOn: { [rule: string]: Severity } = Object.fromEntries(
  rules.filter((rule) => rule.off).map((rule) => [rule.id, rule.severity]),
);

const runFor = (rule: Rule): readonly Rule[] => (rule.checkAllows || rule.id.startsWith('allow-') ? rules : [rule]);

const findingsOf = (rule: Rule, { text, own }: Example): readonly Finding[] =>
  findingsIn(readMarked(text).text, switchedOn, runFor(rule), own ? [own] : []).filter(
    (finding) => finding.rule === rule.id,
  );

/** All that a finding shows. */
const wordsOf = (finding: Finding): string[] => [
  finding.message,
  ...(finding.related ?? []).map(({ message }) => message),
  ...(finding.fixes?.() ?? []).map(({ title }) => title),
];

/** What the packs say in words of their own, and their names. */
const clausesIn = (data: unknown): string[] =>
  data && typeof data === 'object'
    ? Object.entries(data).flatMap(([key, value]) =>
        /^(?:id|title|text|section)$/.test(key) && typeof value === 'string' ? [value] : clausesIn(value),
      )
    : [];

const termNames = new Set(termLists.flatMap(({ terms }) => terms.map(({ name }) => name)));

/** What is the same in every language: clauses and names of packs, and terms of the notation. */
const sameEverywhere = ({ text, own }: Example): string[] =>
  [...clausesIn(contextOf(readMarked(text).text, own ? [own] : []).limits.packs), ...termNames].sort(
    (a, b) => b.length - a.length,
  );

/** Words of the names that units and strings of the notation have in a message. */
const unitWords = /\b(?:min|kPa|(?:gal|gpm)(?:-us|-imp)?)\b/g;

/** Keywords and labels that the rules name as such, in whatever language. */
const named: Readonly<Record<string, readonly string[]>> = {
  'missing-depth': ['casing'],
  'misplaced-keyword': ['casing', 'liner'],
  'missing-label': ['stem'],
  'near-keyword': ['casing'],
  'record-incomplete': ['seal'],
  'unexpected-depth': ['casing'],
};

/** Where a text stands that is no part of a longer word. */
const alone = (text: string): RegExp => new RegExp(`(?<![A-Za-z])${text.replace(/[^\w\s]/g, '\\$&')}(?![A-Za-z])`, 'g');

/** English words of a message that come neither from the log nor from what is the same in every language. */
function englishIn(words: string, example: Example): string[] {
  const left = sameEverywhere(example)
    .reduce((text, same) => text.replaceAll(alone(same), ''), words)
    .replace(unitWords, '');
  const written = new Set([example.text, example.fixed, ...rules.map(({ id }) => id)].join(' ').match(/[A-Za-z]+/g));
  return (left.match(/[A-Za-z]{3,}/g) ?? []).filter((word) => !written.has(word) || kinds.has(word));
}

/** Keywords that a sentence names by what they mean. */
const kinds = new Set(['casing', 'liner', 'grout', 'seal', 'pack', 'plug']);

afterEach(() => l10n.config({ contents: {} }));

describe('in a window of another language no words of a finding are English', () => {
  beforeEach(() => l10n.config({ contents: strangeBundle }));

  test.each(rules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
    const shown = rule.flagged.flatMap((example) =>
      findingsOf(rule, example).flatMap((finding) => wordsOf(finding).map((words) => ({ words, example }))),
    );
    expect(shown.length).toBeGreaterThan(0);
    expect(shown.map(({ words }) => words).filter((words) => !words.startsWith('«'))).toEqual([]);
    const english = shown.flatMap(({ words, example }) =>
      englishIn(words, example)
        .filter((word) => !named[rule.id]?.includes(word))
        .map((word) => `${word}: ${words}`),
    );
    expect(english).toEqual([]);
  });
});
