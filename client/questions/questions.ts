import * as vscode from 'vscode';
import { type QuestionsAnswer, type QuestionsParams, questionsRequest } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

const logInFront = (): vscode.TextDocument | null => {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === 'drillhand' ? document : null;
};

async function show({ text }: QuestionsAnswer): Promise<void> {
  const document = await vscode.workspace.openTextDocument({ language: 'plaintext', content: text });
  await vscode.window.showTextDocument(document);
}

async function openQuestions(server: CheckerServer): Promise<void> {
  const log = logInFront();
  if (log === null) {
    void vscode.window.showInformationMessage(vscode.l10n.t('Open a well log first.'));
    return;
  }
  const params: QuestionsParams = { textDocument: { uri: server.nameOf(log.uri) } };
  const answer = await server.ask<QuestionsAnswer | null>(questionsRequest, params);
  if (answer === null) {
    void vscode.window.showWarningMessage(vscode.l10n.t('The checker has not read this log yet. Try again.'));
  } else if (answer.count === 0) {
    void vscode.window.showInformationMessage(vscode.l10n.t('Nothing in this log is left open for the crew.'));
  } else await show(answer);
}

/** The command that opens the questions for the crew as a text to be sent. */
export const registerQuestions = (server: CheckerServer): vscode.Disposable[] => [
  vscode.commands.registerCommand('drillhand.questions', () => openQuestions(server)),
];
