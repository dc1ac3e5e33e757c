import { capital } from '../../drawing/words.ts';
import { type CrewQuestion, introduction, nothingOpen, parts, partTitle } from '../../export/questions/index.ts';
import { codeSpan, escapeMarkdown } from '../../features/markdown.ts';

const questionMarkdown = ({ number, about, written, beside, says, asks }: CrewQuestion): string =>
  [
    `${number}. **${escapeMarkdown(capital(about))}**`,
    ...(written.text === '' ? [] : [`   written: ${codeSpan(written.text)} (line ${written.line + 1})`]),
    ...beside.map(({ line, text }) => `   beside it: ${codeSpan(text)} (line ${line + 1})`),
    `   ${escapeMarkdown(says)}`,
    `   *${escapeMarkdown(asks)}*`,
  ].join('  \n');

/** The list as Markdown; `name` is the well's. */
export function questionsMarkdown(name: string, questions: readonly CrewQuestion[]): string {
  const sections = parts.flatMap((part) => {
    const own = questions.filter((each) => each.part === part);
    return own.length === 0 ? [] : [`## ${partTitle(part)}`, ...own.map(questionMarkdown)];
  });
  const body = questions.length === 0 ? [nothingOpen()] : [introduction(questions.length), ...sections];
  return `${[`# Questions for the crew: ${escapeMarkdown(name)}`, ...body].join('\n\n')}\n`;
}
