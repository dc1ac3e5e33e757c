import { RequestType, RequestType0 } from 'vscode-languageserver';
import { logStatus } from '../features/log-status.ts';
import { newLog, newLogChoices } from '../features/new-log.ts';
import { dueName } from '../folder/summary-text.ts';
import {
  type LogStatus,
  logStatusRequest,
  type NewLogChoices,
  type NewLogParams,
  newLogChoicesRequest,
  newLogRequest,
} from './protocol.ts';
import { onDocument, type Registration } from './registration.ts';

const status = new RequestType<{ readonly textDocument: { readonly uri: string } }, LogStatus | null, void>(
  logStatusRequest,
);
const choices = new RequestType0<NewLogChoices, void>(newLogChoicesRequest);
const fresh = new RequestType<NewLogParams, string, void>(newLogRequest);

/** What is due by the name that the editor's language has for it. */
const inWords = ({ due, ...status }: ReturnType<typeof logStatus>): LogStatus => ({
  ...status,
  due: due && { ...due, what: dueName(due.what) },
});

/** What stands around the text in an editor. */
export const furnitureRequests: readonly Registration[] = [
  onDocument(status, null, (snapshot, _, session) => inWords(logStatus(snapshot, session.today()))),
  (connection) => connection.onRequest(choices, () => newLogChoices()),
  (connection) => connection.onRequest(fresh, ({ units, packs }) => newLog(units, packs)),
];
