import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as l10n from '@vscode/l10n';
import { afterEach, expect, test } from 'vitest';
import { questionListHtml, questionsFor, questionsText } from '../../server/export/questions/index.ts';
import { rules } from '../../server/rules/index.generated.ts';
import type { Rule } from '../../server/rules/rule.ts';
import { strangeBundle } from '../client/strange-language.ts';
import { contextOf, findingsIn } from '../rules/checked.ts';
import { readMarked } from '../rules/marked.ts';

const root = path.resolve(import.meta.dirname, '../..');
const french: { [text: string]: string } = JSON.parse(
  readFileSync(path.join(root, 'client/l10n/bundle.l10n.fr.json'), 'utf8'),
);

const log = [
  'well KH-04',
  'owner ?',
  'strata',
  '  0 - 3.8 clay',
  '  - 6? sand',
  '  - 61 limestone',
  'casing +0.45 - 7.2 steel 168.3 x 6.4',
  '  shoe ?',
  '  grout 0 - 7.2 neat cement, ? m3',
  'liner 6 - 61 pvc 114.3 sdr 26',
  '  screen 40 - ? pvc 114.3, slot 0.5',
  '  seal 38 - 39? bentonite chips',
  '  pack ? - 61 sand',
  '  plug ?  ?',
  '  packer ?',
  'water',
  '  38.5? fresh, ? L/min',
  '  level ?',
  '  flow ? L/min',
  'test pump ? L/min',
  '  0 5.2',
  '  1 ?',
  'disinfection ? mg/L',
  'pump ?',
  'abandonment 2026-06-01',
  '  0 - ? neat cement',
].join('\n');

const samples = readdirSync(path.join(root, 'samples'))
  .filter((name) => name.endsWith('.well'))
  .map((name) => readFileSync(path.join(root, 'samples', name), 'utf8'));

const openIn = (text: string) => questionsFor(contextOf(text).record, [], text.split('\n'));

/** Words of three letters or more that do not stand in the log. */
const foreignTo = (text: string, words: string): string[] => {
  const own = new Set(text.match(/[A-Za-z]+/g));
  return (words.match(/[A-Za-z]{3,}/g) ?? []).filter((word) => !own.has(word));
};

afterEach(() => l10n.config({ contents: {} }));

test('in a window of another language nothing of the list is English', () => {
  l10n.config({ contents: strangeBundle });
  expect(openIn(log).length).toBeGreaterThan(15);
  for (const text of [log, ...samples]) {
    const questions = openIn(text);
    expect(foreignTo(text, questionsText('', questions))).toEqual([]);
    expect(foreignTo(text, (questionListHtml(questions) ?? '').replace(/<[^>]*>|&[a-z]+;/g, ' '))).toEqual([]);
    for (const { says, asks } of questions) expect([says[0], asks[0]]).toEqual(['«', '«']);
  }
});

test('what a finding asks, and what it says without its advice, are French in a French window', () => {
  l10n.config({ contents: french });
  const text = 'hole\n  0 - 61 152\nstrata\n  0 - 44.2 limestone';
  const [question] = questionsFor(contextOf(text).record, findingsIn(text), text.split('\n'));
  expect(question?.about).toBe('terrain, 0 – 44.2 m');
  expect(question?.says).toBe('Les couches finissent à 44.2 m, 16.8 m au-dessus du fond du trou à 61 m.');
  expect(question?.asks).toBe('Quel terrain a-t-on rencontré jusqu’au fond?');
});

/** What rules say of their examples. */
const messagesFor = (rules: readonly Rule[]): string[] =>
  rules.flatMap((rule) =>
    rule.flagged.flatMap(({ text, own }) =>
      findingsIn(readMarked(text).text, {}, [rule], own ? [own] : []).map(({ message }) => message),
    ),
  );

test('a finding has its advice behind the last semicolon in French too, where the list leaves it off', () => {
  const asking = rules.filter(({ crew }) => crew !== undefined);
  const clauses = () => messagesFor(asking).map((message) => message.split('; ').length);
  const inEnglish = clauses();
  expect(Math.max(...inEnglish)).toBeGreaterThan(1);
  l10n.config({ contents: french });
  expect(clauses()).toEqual(inEnglish);
});

test('counts one as one in French, and says so where nothing is open', () => {
  l10n.config({ contents: french });
  const one = questionsText('KH-04', openIn('well KH-04\nowner ?'));
  expect(one).toMatch(/^Questions pour l’équipe\u00a0: KH-04\n=+\n\nUne question est apparue/);
  expect(one).toContain('Non noté\u00a0:');
  expect(one).toContain('Qu’en était-il?\n   Réponse\u00a0: ____');
  expect(questionsText('KH-04', [])).toContain('Rien dans ce journal ne reste à demander à l’équipe.');
});
