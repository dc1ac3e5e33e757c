import {
  type CompletionItem,
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
import type { Around } from '../features/completion/place.ts';
import type { About } from '../features/completion/suggestion.ts';
import { complete } from '../features/completion.ts';
import { describeSuggestion } from '../features/completion-docs.ts';
import { documentHighlights } from '../features/document-highlights.ts';
import { documentSymbols } from '../features/document-symbols.ts';
import { foldingRanges, foldSummary } from '../features/folding-ranges.ts';
import { formatEdits } from '../features/format.ts';
import { hover } from '../features/hover.ts';
import { selectionRanges } from '../features/selection-ranges.ts';
import { semanticTokens } from '../features/semantic-tokens.ts';
import { actionRequests } from './action-requests.ts';
import { besideRequests } from './beside-requests.ts';
import {
  type CompletionAbility,
  completionListOf,
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
import { linkRequests } from './link-requests.ts';
import { navigationRequests } from './navigation-requests.ts';
import { notesRequests } from './notes-requests.ts';
import { previewRequests } from './preview-requests.ts';
import { questionsRequests } from './questions-requests.ts';
import { onDocument, onItem, type Registration } from './registration.ts';
import type { Session } from './session.ts';
import { typingRequests } from './typing-requests.ts';
import { wellRequests } from './well-requests.ts';

const abilityOf = ({ client, asksAgain }: Session): CompletionAbility => {
  const completion = client.textDocument?.completion;
  return {
    snippets: completion?.completionItem?.snippetSupport ?? false,
    defaultRange: completion?.completionList?.itemDefaults?.includes('editRange') ?? false,
    asksAgain,
  };
};

const around = (session: Session, uri: string): Around => ({
  used: session.usedBeside(uri),
  today: session.today(),
});

function resolved(item: CompletionItem): CompletionItem {
  const about = item.data as About | undefined;
  const text = about === undefined ? null : describeSuggestion(about);
  return text === null ? item : { ...item, documentation: markdown(text) };
}

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
  onItem(CompletionResolveRequest.type, resolved),
  onDocument(DocumentSymbolRequest.type, null, (snapshot) =>
    documentSymbols(snapshot).map((outline) => symbolOf(outline, snapshot.lines)),
  ),
  onDocument(FoldingRangeRequest.type, null, (snapshot, _, { client }) => {
    const isShown = client.textDocument?.foldingRange?.foldingRange?.collapsedText ?? false;
    return foldingRanges(snapshot).map((fold) => foldingRangeOf(fold, isShown ? foldSummary(snapshot, fold) : ''));
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
  ...actionRequests,
  ...besideRequests,
  ...navigationRequests,
  ...linkRequests,
  ...wellRequests,
  ...previewRequests,
  ...exportRequests,
  ...folderRequests,
  ...questionsRequests,
  ...typingRequests,
  ...furnitureRequests,
  ...notesRequests,
];
