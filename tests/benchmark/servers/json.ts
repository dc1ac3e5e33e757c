import { createConnection, ProposedFeatures, TextDocumentSyncKind } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { validateJson } from '../contenders/json.ts';

/** The least server round the JSON service: incremental sync, every version checked, no wait. */
const connection = createConnection(ProposedFeatures.all);
const documents = new Map<string, TextDocument>();

const publish = async (document: TextDocument): Promise<void> => {
  const { uri, version } = document;
  const diagnostics = await validateJson(document);
  await connection.sendDiagnostics({ uri, version, diagnostics });
};

const keep = (document: TextDocument): Promise<void> => {
  documents.set(document.uri, document);
  return publish(document);
};

connection.onInitialize(() => ({ capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental } }));
connection.onDidOpenTextDocument(({ textDocument: { uri, languageId, version, text } }) =>
  keep(TextDocument.create(uri, languageId, version, text)),
);
connection.onDidChangeTextDocument(async ({ textDocument: { uri, version }, contentChanges }) => {
  const document = documents.get(uri);
  if (document) await keep(TextDocument.update(document, contentChanges, version));
});
connection.listen();
