import * as l10n from '@vscode/l10n';
import { RequestType } from 'vscode-languageserver';
import type { Snapshot } from '../analysis/snapshot.ts';
import { type ColumnId, columnIds, columnTitle, previewSections } from '../drawing/index.ts';
import { type Preview, type PreviewParams, previewRequest } from './protocol.ts';
import { onDocument, type Registration } from './registration.ts';

function fileName(uri: string): string {
  const name = uri.slice(uri.lastIndexOf('/') + 1);
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}

const isColumn = (id: string): id is ColumnId => (columnIds as readonly string[]).includes(id);

function previewOf({ version, log, record, findings }: Snapshot, params: PreviewParams): Preview {
  const hidden = (params.hidden ?? []).filter(isColumn);
  return {
    version,
    title: log.header.well?.text || fileName(params.textDocument.uri),
    sections: previewSections(record, findings, { hidden, widthMm: params.widthMm ?? null }),
    columns: columnIds.map((id) => ({ id, title: l10n.t(columnTitle(id)), shown: !hidden.includes(id) })),
  };
}

const preview = new RequestType<PreviewParams, Preview | null, void>(previewRequest);

export const previewRequests: readonly Registration[] = [onDocument(preview, null, previewOf)];
