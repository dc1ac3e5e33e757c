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
