import { createConnection, ProposedFeatures, TextDocumentSyncKind } from 'vscode-languageserver/node';
import { applyChange, type LineText, lineTextOf } from '../../../server/lsp/documents.ts';

/** A server that keeps the lines of its documents and finds nothing in them: what the protocol alone costs. */
const connection = createConnection(ProposedFeatures.all);
const texts = new Map<string, LineText>();

const publish = (uri: string, version: number): Promise<void> =>
  connection.sendDiagnostics({ uri, version, diagnostics: [] });

connection.onInitialize(() => ({ capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental } }));
connection.onDidOpenTextDocument(({ textDocument: { uri, version, text } }) => {
  texts.set(uri, lineTextOf(text));
  return publish(uri, version);
});
connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
  let text = texts.get(uri);
  if (!text) return;
  for (const change of contentChanges) ({ text } = applyChange(text, change));
  texts.set(uri, text);
  return publish(uri, version);
});
connection.listen();
