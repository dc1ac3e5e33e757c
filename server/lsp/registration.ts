import type { Connection, GenericRequestHandler, ProtocolRequestType, RequestType } from 'vscode-languageserver';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Session } from './session.ts';

/** Answers one kind of request for as long as the connection lives. */
export type Registration = (connection: Connection, session: Session) => void;

interface AboutDocument {
  readonly textDocument: { readonly uri: string };
}

/** Registers a request about an open document; `empty` answers for one that is not open, and where the feature fails. */
export function onDocument<P extends AboutDocument, R, PR, E, RO>(
  type: ProtocolRequestType<P, R, PR, E, RO> | RequestType<P, R, E>,
  empty: R,
  answer: (snapshot: Snapshot, params: P, session: Session) => R,
): Registration {
  const answered = (session: Session, params: P): R => {
    try {
      const snapshot = session.snapshot(params.textDocument.uri);
      return snapshot === null ? empty : answer(snapshot, params, session);
    } catch (error) {
      session.fail(type.method, error);
      return empty;
    }
  };
  return (connection, session) => {
    const handler: GenericRequestHandler<unknown, unknown> = (params: P) => answered(session, params);
    connection.onRequest(type.method, handler);
  };
}

/** Answers for an item that was sent before and is now wanted in full; it stays as it is where that fails. */
export const onItem =
  <T, E>(
    type: RequestType<T, T, E> | ProtocolRequestType<T, T, never, E, void>,
    answer: (item: T, session: Session) => T,
  ): Registration =>
  (connection, session) => {
    const answered = (item: T): T => {
      try {
        return answer(item, session);
      } catch (error) {
        session.fail(type.method, error);
        return item;
      }
    };
    const handler: GenericRequestHandler<unknown, unknown> = answered;
    connection.onRequest(type.method, handler);
  };
