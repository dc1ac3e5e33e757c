import { DefinitionRequest, type Location, ReferencesRequest } from 'vscode-languageserver';
import type { Span } from '../../grammar/span.ts';
import { allowDefinition } from '../features/allowed-lines.ts';
import { contactDefinition, contactReferences } from '../features/contacts.ts';
import { placeOf, rangeOf } from './convert.ts';
import { onDocument, type Registration } from './registration.ts';

const locationIn =
  (uri: string) =>
  (span: Span): Location => ({ uri, range: rangeOf(span) });

/** The ways between what a log says once and what leans on it. */
export const navigationRequests: readonly Registration[] = [
  onDocument(DefinitionRequest.type, null, (snapshot, { position, textDocument: { uri } }) => {
    const at = placeOf(position);
    const span = allowDefinition(snapshot, at) ?? contactDefinition(snapshot, at);
    return span === null ? null : locationIn(uri)(span);
  }),
  onDocument(ReferencesRequest.type, null, (snapshot, { position, context, textDocument: { uri } }) =>
    contactReferences(snapshot, placeOf(position), context.includeDeclaration).map(locationIn(uri)),
  ),
];
