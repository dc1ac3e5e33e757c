import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as l10n from '@vscode/l10n';
import { globSync } from 'tinyglobby';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { table } from '../../grammar/table.ts';
import { termLists } from '../../grammar/terms/index.ts';
import { units } from '../../grammar/units.ts';
import { analyse } from '../../server/analysis/index.ts';
import type { Snapshot } from '../../server/analysis/snapshot.ts';
import { fixAllAction, quickFixActions } from '../../server/features/code-actions.ts';
import { codeLenses } from '../../server/features/code-lenses.ts';
import type { About } from '../../server/features/completion/suggestion.ts';
import { complete } from '../../server/features/completion.ts';
import { describeSuggestion } from '../../server/features/completion-docs.ts';
import { documentLinks } from '../../server/features/document-links.ts';
import { hover } from '../../server/features/hover.ts';
import { inlayHints } from '../../server/features/inlay-hints.ts';
import { escapeMarkdown } from '../../server/features/markdown.ts';
import { newLogChoices } from '../../server/features/new-log.ts';
import { rulePage } from '../../server/features/page.ts';
import { refactorings } from '../../server/features/refactorings.ts';
import { showsAll } from '../../server/features/shows.ts';
import { signatureHelp } from '../../server/features/signature-help.ts';
import { packs } from '../../server/packs/index.ts';
import { limitNames } from '../../server/packs/limit-names.ts';
import type { Pack } from '../../server/packs/limits.ts';
import { whenText } from '../../server/packs/words.ts';
import { rules } from '../../server/rules/index.generated.ts';
import { strangeBundle } from '../client/strange-language.ts';

const root = path.join(import.meta.dirname, '../..');
const settings = { packs: [], severities: {}, today: '2026-12-31' };

/** A place of the text: a line and a column. */
type Place = readonly [number, number];

/** Where something begins or ends on each line, and the end of each line. */
const placesOf = ({ tree, lines }: Snapshot): readonly Place[] =>
  tree.lines.flatMap((line, number) => {
    const columns = [line.keyword?.start, line.depths?.start, ...line.items.flatMap((each) => [each.start, each.end])];
    return [...new Set([...columns, lines[number]?.length ?? 0])].flatMap((column): Place[] =>
      column === undefined ? [] : [[number, column]],
    );
  });

type Telling = (snapshot: Snapshot) => readonly (string | null | undefined)[];

const atPlaces =
  (tell: (snapshot: Snapshot, line: number, column: number) => readonly (string | null | undefined)[]): Telling =>
  (snapshot) =>
    placesOf(snapshot).flatMap(([line, column]) => tell(snapshot, line, column));

/** Everything that the features say, by feature. */
const tellings: Readonly<Record<string, Telling>> = {
  lenses: (snapshot) => codeLenses(snapshot).map(({ title }) => title),
  hints: (snapshot) =>
    inlayHints(snapshot, 0, snapshot.lines.length, showsAll.inlayHints).flatMap(({ text, about }) => [text, about()]),
  links: (snapshot) => documentLinks(snapshot).map(({ tooltip }) => tooltip),
  'titles of actions': (snapshot) => {
    const all = { first: { line: 0, column: 0 }, last: { line: snapshot.lines.length, column: 0 } };
    return [...quickFixActions(snapshot, all).map(({ title }) => title), fixAllAction(snapshot)?.title];
  },
  'titles of refactorings': atPlaces((snapshot, line, column) => {
    const at = { line, column };
    return refactorings(snapshot, { first: at, last: at }, true).map(({ title }) => title);
  }),
  'help beside a line': atPlaces((snapshot, line, column) => {
    const found = signatureHelp(snapshot, { line, column });
    return found === null ? [] : [found.label, found.markdown, ...found.parameters.map(({ markdown }) => markdown)];
  }),
  suggestions: atPlaces((snapshot, line, column) =>
    (complete(snapshot, { line, column })?.suggestions ?? []).flatMap(({ detail, kind, label }) => [
      detail,
      kind === 'template' ? label : null,
    ]),
  ),
  hovers: atPlaces((snapshot, line, column) => [hover(snapshot, { line, column })?.markdown]),
};

/** Every text of some data, however deep it stands. */
const textsIn = (data: unknown): string[] => {
  if (typeof data === 'string') return [data];
  return data !== null && typeof data === 'object' ? Object.values(data).flatMap(textsIn) : [];
};

/** What a pack says in its own words and those of its code, on every page. */
const saidByPack = (pack: Pack): string[] => [...textsIn(pack), ...pack.cases.map(({ when }) => whenText(when))];

/** What is the same in every language: the notation with its dictionary, units, ids, packs and sources. */
const sameEverywhere: readonly string[] = [
  ...table.flatMap(({ id, keywords, example, slots }) => [
    id,
    ...keywords,
    ...example.split('\n'),
    ...slots.flatMap((slot) => slot.labels),
  ]),
  ...termLists.flatMap(({ terms }) => terms.flatMap(textsIn)),
  ...units.flatMap(({ id, spellings }) => [id, ...spellings]),
  ...rules.flatMap(({ id, source }) => [id, source]),
  ...packs.flatMap(saidByPack),
  ...limitNames,
  '```drillhand',
];

/** What is so of one log: its own text, and where the formulas of its record are from. */
const sameIn = ({ lines, record }: Snapshot): string[] => [
  ...lines,
  ...lines.flatMap((line) => [...line.split(/[;#:]/), ...line.split(',')]),
  ...record.figures.map(({ source }) => source),
];

const isOneWord = (text: string): boolean => /^\S+$/.test(text);

const longestFirst = (texts: readonly string[]): string[] =>
  [...new Set(texts.map((text) => text.trim()).flatMap((text) => [text, escapeMarkdown(text)]))]
    .filter((text) => /[A-Za-z]{3}/.test(text) && !isOneWord(text))
    .sort((a, b) => b.length - a.length);

const wordsOf = (text: string): string[] => text.match(/[A-Za-z]{3,}/g) ?? [];

const loneWords = (texts: readonly string[]): string[] =>
  texts.flatMap((text) => (isOneWord(text.trim()) ? wordsOf(text) : []));

/** Finds words in plain letters that neither the log nor anything the same in every language has. */
function finderFor(snapshot: Snapshot): (text: string) => string[] {
  const texts = [...sameEverywhere, ...sameIn(snapshot)];
  const phrases = longestFirst(texts);
  const words = new Set([
    ...loneWords(texts),
    ...snapshot.lines.flatMap((line) => loneWords(line.replace(/[;#].*/, '').split(/[\s,]+/))),
  ]);
  return (text) =>
    wordsOf(phrases.reduce((rest, phrase) => rest.replaceAll(phrase, ' '), text)).filter((word) => !words.has(word));
}

/** Everything that a suggestion may be about. */
const abouts: readonly About[] = [
  ...table.map(({ id }) => ({ kind: 'row' as const, id })),
  ...rules.map(({ id }) => ({ kind: 'rule' as const, id })),
  ...packs.map(({ id }) => ({ kind: 'pack' as const, id })),
  ...termLists.flatMap((list) => list.terms.map(({ id }) => ({ kind: 'term' as const, list: list.id, id }))),
];

const files = globSync(['samples/**/*.well'], { cwd: root }).sort();

describe('in a window of another language no words of a feature are English', () => {
  const snapshots = new Map<string, Snapshot>();

  beforeAll(() => {
    l10n.config({ contents: strangeBundle });
    for (const file of files)
      snapshots.set(file, analyse(readFileSync(path.join(root, file), 'utf8').split(/\r?\n/), settings, 1));
  });
  afterAll(() => l10n.config({ contents: {} }));

  const sampled = (tell: Telling): [string, readonly string[]][] =>
    [...snapshots.values()].flatMap((snapshot) => {
      const englishIn = finderFor(snapshot);
      return [...new Set(tell(snapshot))].map((text): [string, readonly string[]] => [
        text ?? '',
        englishIn(text ?? ''),
      ]);
    });

  test.each(Object.entries(tellings))('%s', (_, tell) => {
    const told = sampled(tell).filter(([text]) => text !== '');
    expect(told.length).toBeGreaterThan(10);
    expect(told.filter(([, english]) => english.length > 0)).toEqual([]);
  });

  test('a text that was not looked up is found', () => {
    const englishIn = finderFor(analyse(['casing 0 - 7.2 steel  ; set dry'], settings, 1));
    expect(englishIn(`«${l10n.t('down to {0}', '7.2 m')}» casing, set dry: mend this`)).toEqual(['mend', 'this']);
  });

  test('pages of rules, what is said of each suggestion, and what is chosen for a new log', () => {
    const englishIn = finderFor(analyse([''], settings, 1));
    const pages = rules.map(({ id }) => (rulePage(id) ?? '').replace(/```[\s\S]*?```/g, ''));
    const described = abouts.map((about) => describeSuggestion(about) ?? '');
    const choices = newLogChoices().units.map(({ title }) => title);
    expect([...pages, ...described, ...choices].flatMap((text) => englishIn(text).map((word) => [word, text]))).toEqual(
      [],
    );
  });
});
