import {
  CodeLensRequest,
  type InlayHint,
  InlayHintRequest,
  InlayHintResolveRequest,
  type SignatureHelp,
  SignatureHelpRequest,
  SignatureHelpTriggerKind,
} from 'vscode-languageserver';
import { codeLenses } from '../features/code-lenses.ts';
import { aboutHint, inlayHints } from '../features/inlay-hints.ts';
import { type Signature, signatureHelp } from '../features/signature-help.ts';
import { markdown, placeOf, positionOf, rangeOf } from './convert.ts';
import { onDocument, onItem, type Registration } from './registration.ts';
import type { Session } from './session.ts';

const helpOf = ({ label, markdown: text, parameters, active }: Signature): SignatureHelp => ({
  activeSignature: 0,
  activeParameter: active,
  signatures: [
    {
      label,
      documentation: markdown(text),
      activeParameter: active,
      parameters: parameters.map(({ start, end, markdown: about }) => ({
        label: [start, end],
        documentation: markdown(about),
      })),
    },
  ],
});

/** A lens does nothing when it is clicked, until an editor gives it something to do. */
const noCommand = '';

/** True for an editor that asks for what is told of a hint when someone points at it. */
const asksLater = ({ client }: Session): boolean =>
  client.textDocument?.inlayHint?.resolveSupport?.properties.includes('tooltip') ?? false;

const uriOf = (data: unknown): string =>
  typeof data === 'object' && data !== null && 'uri' in data && typeof data.uri === 'string' ? data.uri : '';

/** A hint with what is told of it; as it was where the text has no such hint any more. */
function resolved(hint: InlayHint, session: Session): InlayHint {
  const snapshot = session.snapshot(uriOf(hint.data));
  const { line, column } = placeOf(hint.position);
  const text = typeof hint.label === 'string' ? hint.label : '';
  const about = snapshot === null ? null : aboutHint(snapshot, line, column, text);
  return about === null ? hint : { ...hint, tooltip: about };
}

/** What an editor shows beside the text of its own accord. */
export const besideRequests: readonly Registration[] = [
  onDocument(InlayHintRequest.type, null, (snapshot, { range, textDocument }, session) =>
    inlayHints(snapshot, range.start.line, range.end.line, session.shows(textDocument.uri).inlayHints).map((hint) => ({
      position: positionOf(hint),
      label: hint.text,
      ...(asksLater(session) ? { data: { uri: textDocument.uri } } : { tooltip: hint.about() }),
      paddingLeft: true,
    })),
  ),
  onItem(InlayHintResolveRequest.type, resolved),
  onDocument(CodeLensRequest.type, null, (snapshot, { textDocument }, session) =>
    session.shows(textDocument.uri).codeLens
      ? codeLenses(snapshot).map(({ span, title }) => ({
          range: rangeOf(span),
          command: { title, command: noCommand },
        }))
      : [],
  ),
  onDocument(SignatureHelpRequest.type, null, (snapshot, { position, context }) => {
    const found = signatureHelp(snapshot, placeOf(position));
    const isAsked = context === undefined || context.triggerKind === SignatureHelpTriggerKind.Invoked;
    return found !== null && (isAsked || found.unasked) ? helpOf(found) : null;
  }),
];
