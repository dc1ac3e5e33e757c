import * as l10n from '@vscode/l10n';
import { CodeActionKind, type InitializeResult, TextDocumentSyncKind } from 'vscode-languageserver';
import { tokenTypes } from '../features/semantic-tokens.ts';
import { fixAllKind } from './convert.ts';

/** What the server can do, told once at the start. */
export const initializeResult = (): InitializeResult => ({
  serverInfo: { name: 'drillhand' },
  capabilities: {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    hoverProvider: true,
    completionProvider: { triggerCharacters: [' ', '-', '#'], resolveProvider: true },
    documentSymbolProvider: { label: l10n.t('Well log') },
    foldingRangeProvider: true,
    codeActionProvider: {
      codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.Refactor, fixAllKind],
      resolveProvider: true,
    },
    inlayHintProvider: { resolveProvider: true },
    codeLensProvider: {},
    signatureHelpProvider: { triggerCharacters: [' ', ','] },
    definitionProvider: true,
    referencesProvider: true,
    documentLinkProvider: {},
    renameProvider: { prepareProvider: true },
    workspaceSymbolProvider: true,
    documentHighlightProvider: true,
    selectionRangeProvider: true,
    semanticTokensProvider: { legend: { tokenTypes: [...tokenTypes], tokenModifiers: [] }, full: true, range: true },
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
  },
});
