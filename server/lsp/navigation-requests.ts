import { DefinitionRequest, type Location, type Position, ReferencesRequest } from 'vscode-languageserver';
import type { Span } from '../../grammar/span.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { allowDefinition } from '../features/allowed-lines.ts';
import { contactDefinition, contactReferences } from '../features/contacts.ts';
import { type Position as Place, touchesSpan } from '../features/position.ts';
import { wellIdAt } from '../features/well-id.ts';
import { canonical } from './address.ts';
import { placeOf, rangeOf } from './convert.ts';
import type { Registration } from './registration.ts';
import type { Session } from './session.ts';
import { locationsOfWell } from './well-requests.ts';

const locationIn =
  (uri: string) =>
  (span: Span): Location => ({ uri, range: rangeOf(span) });

const locationOf = ({ uri, range }: Location): Location => ({ uri, range });

const topOfFile = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** The file of the workspace's own pack that is named under the cursor. */
function packDefinition(uri: string, at: Place, { log }: Snapshot, session: Session): Location | null {
  const named = log.packs.find(({ span }) => touchesSpan(span, at));
  const file = named === undefined ? null : session.folder.files.packFile(canonical(uri), named.text);
  return file === null ? null : { uri: file, range: topOfFile };
}

async function definition(uri: string, position: Position, session: Session): Promise<Location[]> {
  const snapshot = session.snapshot(uri);
  if (snapshot === null) return [];
  const at = placeOf(position);
  const well = wellIdAt(snapshot, at);
  if (well !== null) {
    const places = await locationsOfWell(well.text, uri, session);
    return places.filter(({ isOwn }) => isOwn).map(locationOf);
  }
  const pack = packDefinition(uri, at, snapshot, session);
  if (pack !== null) return [pack];
  const span = allowDefinition(snapshot, at) ?? contactDefinition(snapshot, at);
  return span === null ? [] : [locationIn(uri)(span)];
}

async function references(uri: string, position: Position, withBase: boolean, session: Session): Promise<Location[]> {
  const snapshot = session.snapshot(uri);
  if (snapshot === null) return [];
  const at = placeOf(position);
  const well = wellIdAt(snapshot, at);
  if (well === null) return contactReferences(snapshot, at, withBase).map(locationIn(uri));
  const places = await locationsOfWell(well.text, uri, session);
  return places.filter(({ isOwn }) => withBase || !isOwn).map(locationOf);
}

const registration: Registration = (connection, session) => {
  const guarded = async (method: string, find: () => Promise<Location[]>): Promise<Location[]> => {
    try {
      return await find();
    } catch (error) {
      session.fail(method, error);
      return [];
    }
  };
  connection.onRequest(DefinitionRequest.type, ({ textDocument: { uri }, position }) =>
    guarded(DefinitionRequest.method, () => definition(uri, position, session)),
  );
  connection.onRequest(ReferencesRequest.type, ({ textDocument: { uri }, position, context }) =>
    guarded(ReferencesRequest.method, () => references(uri, position, context.includeDeclaration, session)),
  );
};

/** The ways between what is said once and what leans on it, within a log and between the logs of a folder. */
export const navigationRequests: readonly Registration[] = [registration];
