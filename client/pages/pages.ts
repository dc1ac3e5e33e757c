import * as vscode from 'vscode';
import { type PageParams, pageRequest, pageScheme } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

/** What an address such as `drillhand-page:/rule/missing-shoe.md` asks for; null for any other. */
function askedBy({ path }: vscode.Uri): PageParams | null {
  const [, kind, id] = /^\/(rule|pack)\/([^/]+)\.md$/.exec(path) ?? [];
  return (kind === 'rule' || kind === 'pack') && id !== undefined ? { kind, id } : null;
}

/** Shows what the program says of its rules and packs, where links in a log lead to them. */
export function registerPages(server: CheckerServer): vscode.Disposable[] {
  const provideTextDocumentContent = async (uri: vscode.Uri): Promise<string> => {
    const asked = askedBy(uri);
    const text = asked === null ? null : await server.ask<string | null>(pageRequest, asked);
    return text ?? vscode.l10n.t('There is nothing to read about this.');
  };
  return [vscode.workspace.registerTextDocumentContentProvider(pageScheme, { provideTextDocumentContent })];
}
