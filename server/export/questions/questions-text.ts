import * as l10n from '@vscode/l10n';
import { capital } from '../../drawing/words.ts';
import { heading, oneLine } from '../plain-text.ts';
import { type CrewQuestion, type Part, parts, partTitle, type WrittenLine } from './question.ts';

const writtenText = ({ line, text }: WrittenLine): string => `${oneLine(text)}  (${l10n.t('line {0}', line + 1)})`;

const questionText = ({ number, about, written, beside, says, asks }: CrewQuestion): string =>
  [
    `${number}. ${oneLine(capital(about))}`,
    ...(written.text === '' ? [] : [`   ${l10n.t('Written: {0}', writtenText(written))}`]),
    ...beside.map((each) => `   ${l10n.t('Beside it: {0}', writtenText(each))}`),
    `   ${oneLine(says)}`,
    `   ${oneLine(asks)}`,
    `   ${l10n.t('Answer: {0}', '_'.repeat(30))}`,
  ].join('\n');

const partText = (part: Part, questions: readonly CrewQuestion[]): string[] => {
  const own = questions.filter((each) => each.part === part);
  return own.length === 0 ? [] : [heading(partTitle(part), '-'), ...own.map(questionText)];
};

/** How many there are, and how they may be answered. */
export const introduction = (count: number): string =>
  count === 1
    ? l10n.t(
        'One question came up while this log was written up, for those who were at the well. Please answer under each; "not known" is an answer too. Nothing has been filled in for you. Thank you.',
      )
    : l10n.t(
        '{0} questions came up while this log was written up, for those who were at the well. Please answer under each; "not known" is an answer too. Nothing has been filled in for you. Thank you.',
        count,
      );

export const nothingOpen = (): string => l10n.t('Nothing in this log is left open for the crew.');

/** The list as plain text, ready to be sent; `name` is the well's. */
export function questionsText(name: string, questions: readonly CrewQuestion[]): string {
  const title = heading(oneLine(l10n.t('Questions for the crew: {0}', name)), '=');
  const body =
    questions.length === 0
      ? [nothingOpen()]
      : [introduction(questions.length), ...parts.flatMap((part) => partText(part, questions))];
  return `${[title, ...body].join('\n\n')}\n`;
}
