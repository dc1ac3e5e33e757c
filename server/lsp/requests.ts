import {
  type CodeActionContext,
  CodeActionRequest,
  CompletionRequest,
  CompletionResolveRequest,
  DocumentFormattingRequest,
  DocumentHighlightRequest,
  DocumentRangeFormattingRequest,
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  SelectionRangeRequest,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver';
import { type Action, fixAllAction, quickFixActions } from '../features/code-actions.ts';
import type { Around } from '../features/completion/place.ts';
import type { About } from '../features/completion/suggestion.ts';
import { allWords } from '../features/completion/used-words.ts';
import { complete } from '../features/completion.ts';
import { describeSuggestion } from '../features/completion-docs.ts';
import { documentHighlights } from '../features/document-highlights.ts';
import { documentSymbols } from '../features/document-symbols.ts';
import { foldingRanges } from '../features/folding-ranges.ts';
import { formatEdits } from '../features/format.ts';
import { hover } from '../features/hover.ts';
import { selectionRanges } from '../features/selection-ranges.ts';
import { semanticTokens } from '../features/semantic-tokens.ts';
import {
  type CompletionAbility,
  codeActionOf,
  completionListOf,
  fixAllKind,
  foldingRangeOf,
  markdown,
  placeOf,
  rangeOf,
  selectionRangeOf,
  symbolOf,
  textEditOf,
  tokenNumbersOf,
} from './convert.ts';
import { exportRequests } from './export-requests.ts';
import { folderRequests } from './folder-requests.ts';
import { furnitureRequests } from './furniture-requests.ts';
import { notesRequests } from './notes-requests.ts';
import { previewRequests } from './preview-requests.ts';
import { questionsRequests } from './questions-requests.ts';
import { onDocument, type Registration } from './registration.ts';
import type { Session } from './session.ts';
import { typingRequests } from './typing-requests.ts';

const abilityOf = ({ client }: Session): CompletionAbility => {
  const completion = client.textDocument?.completion;
  return {
    snippets: completion?.completionItem?.snippetSupport ?? false,
    defaultRange: completion?.completionList?.itemDefaults?.includes('editRange') ?? false,
  };
};

/** True where the editor asks for actions of this kind: a kind covers those below it. */
const isWanted = ({ only }: CodeActionContext, kind: string): boolean =>
  only === undefined || only.some((wanted) => kind === wanted || kind.startsWith(`${wanted}.`));

const asksByName = (context: CodeActionContext, kind: string): boolean =>
  context.only !== undefined && isWanted(context, kind);

const around = (session: Session, uri: string): Around => ({
  used: allWords(session.beside(uri)),
  today: session.today(),
});

const resolveCompletion: Registration = (connection, session) => {
  connection.onRequest(CompletionResolveRequest.type, (item) => {
    try {
      const about = item.data as About | undefined;
      const text = about === undefined ? null : describeSuggestion(about);
      return text === null ? item : { ...item, documentation: markdown(text) };
    } catch (error) {
      session.fail(CompletionResolveRequest.method, error);
      return item;
    }
  });
};

/** Every request that is answered. */
export const requests: readonly Registration[] = [
  onDocument(HoverRequest.type, null, (snapshot, { position }) => {
    const found = hover(snapshot, placeOf(position));
    return found && { contents: markdown(found.markdown), range: rangeOf(found.span) };
  }),
  onDocument(CompletionRequest.type, null, (snapshot, { position, context, textDocument }, session) => {
    const found = complete(snapshot, placeOf(position), around(session, textDocument.uri));
    const isUseful = found !== null && (found.unasked || context?.triggerCharacter !== ' ');
    return isUseful ? completionListOf(found, abilityOf(session)) : null;
  }),
  resolveCompletion,
  onDocument(DocumentSymbolRequest.type, null, (snapshot) =>
    documentSymbols(snapshot).map((outline) => symbolOf(outline, snapshot.lines)),
  ),
  onDocument(FoldingRangeRequest.type, null, (snapshot) => foldingRanges(snapshot).map(foldingRangeOf)),
  onDocument(CodeActionRequest.type, null, (snapshot, { range, context, textDocument }) => {
    const selection = { first: placeOf(range.start), last: placeOf(range.end) };
    const fixAll = asksByName(context, fixAllKind) ? fixAllAction(snapshot) : null;
    const actions: readonly Action[] = [
      ...(isWanted(context, 'quickfix') ? quickFixActions(snapshot, selection) : []),
      ...(fixAll === null ? [] : [fixAll]),
    ];
    return actions.map((action) => codeActionOf(action, textDocument.uri, context.diagnostics));
  }),
  onDocument(DocumentHighlightRequest.type, null, (snapshot, { position }) =>
    documentHighlights(snapshot, placeOf(position)).map((span) => ({ range: rangeOf(span) })),
  ),
  onDocument(SelectionRangeRequest.type, null, (snapshot, { positions }) =>
    positions.map((position) => selectionRangeOf(selectionRanges(snapshot, placeOf(position)), position)),
  ),
  onDocument(SemanticTokensRequest.type, null, (snapshot) => ({
    data: tokenNumbersOf(semanticTokens(snapshot, 0, snapshot.lines.length - 1), 0),
  })),
  onDocument(SemanticTokensRangeRequest.type, null, (snapshot, { range }) => ({
    data: tokenNumbersOf(semanticTokens(snapshot, range.start.line, range.end.line), range.start.line),
  })),
  onDocument(DocumentFormattingRequest.type, null, (snapshot) => formatEdits(snapshot).map(textEditOf)),
  onDocument(DocumentRangeFormattingRequest.type, null, (snapshot, { range }) =>
    formatEdits(snapshot, range.start.line, range.end.line).map(textEditOf),
  ),
  ...previewRequests,
  ...exportRequests,
  ...folderRequests,
  ...questionsRequests,
  ...typingRequests,
  ...furnitureRequests,
  ...notesRequests,
];
