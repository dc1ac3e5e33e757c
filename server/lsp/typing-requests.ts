import { DocumentOnTypeFormattingRequest, RequestType } from 'vscode-languageserver';
import { nextItem } from '../features/next-item.ts';
import { onEnter } from '../features/on-type.ts';
import { placeOf, textEditOf } from './convert.ts';
import { type NextItem, type NextItemParams, nextItemRequest } from './protocol.ts';
import { onDocument, type Registration } from './registration.ts';

const next = new RequestType<NextItemParams, NextItem | null, void>(nextItemRequest);

/** What is asked while a log is typed. */
export const typingRequests: readonly Registration[] = [
  onDocument(DocumentOnTypeFormattingRequest.type, null, (snapshot, { position, ch }) =>
    ch === '\n' ? onEnter(snapshot, placeOf(position)).map(textEditOf) : null,
  ),
  onDocument(next, null, (snapshot, { selected, offered }) => nextItem(snapshot, selected, offered)),
];
