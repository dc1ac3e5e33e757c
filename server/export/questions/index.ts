export type { Asked, CrewQuestion } from './question.ts';
export { parts, partTitle } from './question.ts';
export { questionsFor } from './questions.ts';
export { questionListHtml } from './questions-html.ts';
export { introduction, nothingOpen, questionsText } from './questions-text.ts';
