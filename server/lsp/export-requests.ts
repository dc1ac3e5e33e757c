import { Buffer } from 'node:buffer';
import * as l10n from '@vscode/l10n';
import { RequestType } from 'vscode-languageserver';
import type { Exported } from '../export/format.ts';
import { exportFormat, exportFormats } from '../export/formats.ts';
import { inEnglish } from './language.ts';
import {
  type ExportAnswer,
  type ExportChoice,
  type ExportParams,
  exportFormatsRequest,
  exportRequest,
} from './protocol.ts';
import type { Registration } from './registration.ts';
import type { Session } from './session.ts';

const request = new RequestType<ExportParams, ExportAnswer, void>(exportRequest);

const choices = new RequestType<Record<string, never>, readonly ExportChoice[], void>(exportFormatsRequest);

const refused = (reason: string): ExportAnswer => ({ files: [], left: [], reason });

const answerOf = ({ files, left }: Exported): ExportAnswer => ({
  files: files.map(({ name, content }) =>
    typeof content === 'string'
      ? { name, text: content, base64: null }
      : { name, text: null, base64: Buffer.from(content).toString('base64') },
  ),
  left,
  reason: null,
});

async function answer({ textDocument, format: id, name }: ExportParams, session: Session): Promise<ExportAnswer> {
  const snapshot = session.snapshotForOthers(textDocument.uri);
  const format = exportFormat(id);
  if (snapshot === null) return refused(l10n.t('the log is not open'));
  if (format === null) return refused(l10n.t('there is no format "{0}"', id));
  const { record, findings, lines: source } = snapshot;
  const asset = (each: string) => session.asset(each);
  const context = { source, findings, name, today: session.today(), asset };
  return answerOf(await inEnglish(() => format.make(record, context)));
}

const registration: Registration = (connection, session) => {
  connection.onRequest(request, async (params) => {
    try {
      return await answer(params, session);
    } catch (error) {
      session.fail(exportRequest, error);
      return refused(error instanceof Error ? error.message : String(error));
    }
  });
};

const telling: Registration = (connection) => {
  connection.onRequest(choices, () =>
    exportFormats.map(({ id, title, extension, many }) => ({ id, title: l10n.t(title), extension, many })),
  );
};

/** The record of an open log, written for others. */
export const exportRequests: readonly Registration[] = [registration, telling];
