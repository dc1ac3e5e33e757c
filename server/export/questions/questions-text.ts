import { capital } from '../../drawing/words.ts';
import { heading, oneLine } from '../plain-text.ts';
import { type CrewQuestion, type Part, parts, partTitles, type WrittenLine } from './question.ts';

const writtenText = ({ line, text }: WrittenLine): string => `${oneLine(text)}  (line ${line + 1})`;

const questionText = ({ number, about, written, beside, says, asks }: CrewQuestion): string =>
  [
    `${number}. ${oneLine(capital(about))}`,
    ...(written.text === '' ? [] : [`   Written: ${writtenText(written)}`]),
    ...beside.map((each) => `   Beside it: ${writtenText(each)}`),
    `   ${oneLine(says)}`,
    `   ${oneLine(asks)}`,
    '   Answer: ______________________________',
  ].join('\n');

const partText = (part: Part, questions: readonly CrewQuestion[]): string[] => {
  const own = questions.filter((each) => each.part === part);
  return own.length === 0 ? [] : [heading(partTitles[part], '-'), ...own.map(questionText)];
};

/** How many there are, and how they may be answered. */
export const introduction = (count: number): string =>
  `${count === 1 ? 'One question' : `${count} questions`} came up while this log was written up, for those who were at the well. Please answer under each; "not known" is an answer too. Nothing has been filled in for you. Thank you.`;

export const nothingOpen = 'Nothing in this log is left open for the crew.';

/** The list as plain text, ready to be sent; `name` is the well's. */
export function questionsText(name: string, questions: readonly CrewQuestion[]): string {
  const title = heading(oneLine(`Questions for the crew: ${name}`), '=');
  const body =
    questions.length === 0
      ? [nothingOpen]
      : [introduction(questions.length), ...parts.flatMap((part) => partText(part, questions))];
  return `${[title, ...body].join('\n\n')}\n`;
}
