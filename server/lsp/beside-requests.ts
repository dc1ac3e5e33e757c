import {
  CodeLensRequest,
  InlayHintRequest,
  type SignatureHelp,
  SignatureHelpRequest,
  SignatureHelpTriggerKind,
} from 'vscode-languageserver';
import { codeLenses } from '../features/code-lenses.ts';
import { inlayHints } from '../features/inlay-hints.ts';
import { type Signature, signatureHelp } from '../features/signature-help.ts';
import { markdown, placeOf, rangeOf } from './convert.ts';
import { onDocument, type Registration } from './registration.ts';

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

/** What an editor shows beside the text of its own accord. */
export const besideRequests: readonly Registration[] = [
  onDocument(InlayHintRequest.type, null, (snapshot, { range, textDocument }, session) =>
    inlayHints(snapshot, range.start.line, range.end.line, session.shows(textDocument.uri).inlayHints).map(
      ({ line, column, text, about }) => ({
        position: { line, character: column },
        label: text,
        tooltip: about,
        paddingLeft: true,
      }),
    ),
  ),
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
