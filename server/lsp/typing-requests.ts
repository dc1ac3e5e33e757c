import { DocumentOnTypeFormattingRequest, RequestType } from 'vscode-languageserver';
import { nextItem } from '../features/next-item.ts';
import { onEnter } from '../features/on-type.ts';
import { pastedRows } from '../features/paste.ts';
import { placeOf, textEditOf } from './convert.ts';
import { pastedFieldSheet } from './field-sheet.ts';
import {
  type NextItem,
  type NextItemParams,
  nextItemRequest,
  type PastedRows,
  type PastedRowsParams,
  pastedRowsRequest,
} from './protocol.ts';
import { onDocument, type Registration } from './registration.ts';

const pasted = new RequestType<PastedRowsParams, PastedRows | null, void>(pastedRowsRequest);
const next = new RequestType<NextItemParams, NextItem | null, void>(nextItemRequest);

/** What is asked while a log is typed. */
export const typingRequests: readonly Registration[] = [
  onDocument(DocumentOnTypeFormattingRequest.type, null, (snapshot, { position, ch }) =>
    ch === '\n' ? onEnter(snapshot, placeOf(position)).map(textEditOf) : null,
  ),
  onDocument(next, null, (snapshot, { selected, offered }) => nextItem(snapshot, selected, offered)),
  onDocument(pasted, null, (snapshot, { position, text }) => {
    const at = placeOf(position);
    return pastedRows(snapshot, at, text) ?? pastedFieldSheet(snapshot, at, text);
  }),
];
