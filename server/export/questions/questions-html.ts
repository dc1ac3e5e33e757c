import * as l10n from '@vscode/l10n';
import { element, fromLine, textElement } from '../../drawing/html.ts';
import { capital } from '../../drawing/words.ts';
import { type CrewQuestion, type Part, parts, partTitle, type WrittenLine } from './question.ts';
import { introduction } from './questions-text.ts';

const writtenHtml = (name: string, { line, text }: WrittenLine): string =>
  element(
    'p',
    { class: name },
    `${textElement('code', {}, text)} ${textElement('span', { class: 'line' }, l10n.t('line {0}', line + 1))}`,
  );

function questionHtml({ number, about, written, beside, says, asks }: CrewQuestion): string {
  const inner = [
    textElement('p', { class: 'about' }, capital(about)),
    ...(written.text === '' ? [] : [writtenHtml('written', written)]),
    ...beside.map((each) => writtenHtml('beside', each)),
    textElement('p', { class: 'says' }, says),
    textElement('p', { class: 'asks' }, asks),
    element('span', { class: 'answer' }, ''),
  ];
  return element('li', { value: number, ...fromLine(written.line) }, `\n${inner.join('\n')}\n`);
}

function partHtml(part: Part, questions: readonly CrewQuestion[]): string[] {
  const own = questions.filter((each) => each.part === part);
  if (own.length === 0) return [];
  const list = element('ol', { class: 'questions' }, `\n${own.map(questionHtml).join('\n')}\n`);
  return [textElement('h3', {}, partTitle(part)), list];
}

/** The list as a stretch of HTML, without a heading of its own; null where nothing is open. */
export const questionListHtml = (questions: readonly CrewQuestion[]): string | null =>
  questions.length === 0
    ? null
    : [
        textElement('p', {}, introduction(questions.length)),
        ...parts.flatMap((part) => partHtml(part, questions)),
      ].join('\n');
