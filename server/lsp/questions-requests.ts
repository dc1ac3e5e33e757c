import { RequestType } from 'vscode-languageserver';
import { wellName } from '../drawing/title.ts';
import { questionsFor, questionsText } from '../export/questions/index.ts';
import { type QuestionsAnswer, type QuestionsParams, questionsRequest } from './protocol.ts';
import { onDocument, type Registration } from './registration.ts';

const request = new RequestType<QuestionsParams, QuestionsAnswer | null, void>(questionsRequest);

/** What only the crew can answer of an open log, as text to be sent. */
export const questionsRequests: readonly Registration[] = [
  onDocument(request, null, ({ record, findings, lines }) => {
    const questions = questionsFor(record, findings, lines);
    return { text: questionsText(wellName(record.log.header), questions), count: questions.length };
  }),
];
