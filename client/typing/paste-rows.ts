import * as vscode from 'vscode';
import { type PastedRows, type PastedRowsParams, pastedRowsRequest } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

/** The part of the editor's way of pasting that is used here; editors before 1.97 do not have it, and their types neither. */
interface PasteEdit {
  title: string;
  kind: unknown;
  insertText: string;
  additionalEdit?: vscode.WorkspaceEdit;
}

interface PasteProvider {
  provideDocumentPasteEdits(
    document: vscode.TextDocument,
    ranges: readonly vscode.Range[],
    data: vscode.DataTransfer,
  ): Promise<PasteEdit[] | undefined>;
}

interface PasteKind {
  append(...parts: string[]): PasteKind;
}

interface PasteApi {
  readonly languages: {
    registerDocumentPasteEditProvider(
      selector: vscode.DocumentSelector,
      provider: PasteProvider,
      metadata: { readonly providedPasteEditKinds: readonly PasteKind[]; readonly pasteMimeTypes: readonly string[] },
    ): vscode.Disposable;
  };
  readonly DocumentDropOrPasteEditKind: { readonly Text: PasteKind };
  readonly DocumentPasteEdit: new (insertText: string, title: string, kind: PasteKind) => PasteEdit;
}

const pasteApi = (): PasteApi | null => {
  const api = vscode as unknown as PasteApi;
  return 'registerDocumentPasteEditProvider' in vscode.languages ? api : null;
};

const plainText = 'text/plain';

function ask(server: CheckerServer, document: vscode.TextDocument, at: vscode.Position, text: string) {
  const params: PastedRowsParams = {
    textDocument: { uri: server.nameOf(document.uri) },
    position: { line: at.line, character: at.character },
    text,
  };
  return server.ask<PastedRows | null>(pastedRowsRequest, params).catch(() => null);
}

const replacedBefore = (at: vscode.Position, { replaceBefore }: PastedRows): vscode.Range =>
  new vscode.Range(at.translate(0, -replaceBefore), at);

function pasteProvider(server: CheckerServer, api: PasteApi, kind: PasteKind): PasteProvider {
  return {
    async provideDocumentPasteEdits(document, ranges, data) {
      const [range] = ranges;
      const text = await data.get(plainText)?.asString();
      if (text === undefined || range === undefined || ranges.length > 1) return undefined;
      const pasted = await ask(server, document, range.start, text);
      if (pasted === null) return undefined;
      const edit = new api.DocumentPasteEdit(pasted.text, vscode.l10n.t('Paste Rows as Lines of the Section'), kind);
      if (pasted.replaceBefore > 0) {
        edit.additionalEdit = new vscode.WorkspaceEdit();
        edit.additionalEdit.delete(document.uri, replacedBefore(range.start, pasted));
      }
      return [edit];
    },
  };
}

/** The same by a command, for an editor that cannot be asked while it pastes. */
async function pasteFromClipboard(server: CheckerServer, editor: vscode.TextEditor): Promise<void> {
  const { document, selection } = editor;
  const pasted = await ask(server, document, selection.start, await vscode.env.clipboard.readText());
  if (pasted === null) {
    const tell = vscode.l10n.t(
      'There are no rows on the clipboard that this section takes. Copy cells of a sheet first.',
    );
    void vscode.window.showInformationMessage(tell);
    return;
  }
  const range = new vscode.Range(replacedBefore(selection.start, pasted).start, selection.end);
  await editor.edit((edit) => edit.replace(range, pasted.text));
}

/** Rows that are pasted from a sheet become lines of the section that they are pasted into. */
export function registerPasteRows(server: CheckerServer): vscode.Disposable[] {
  const command = vscode.commands.registerTextEditorCommand('drillhand.pasteRows', (editor) =>
    pasteFromClipboard(server, editor),
  );
  const api = pasteApi();
  if (api === null) return [command];
  const kind = api.DocumentDropOrPasteEditKind.Text.append('drillhand', 'rows');
  const metadata = { providedPasteEditKinds: [kind], pasteMimeTypes: [plainText] };
  const provider = pasteProvider(server, api, kind);
  return [command, api.languages.registerDocumentPasteEditProvider({ language: 'drillhand' }, provider, metadata)];
}
