import * as l10n from '@vscode/l10n';
import {
  ErrorCodes,
  type Location,
  PrepareRenameRequest,
  RenameRequest,
  ResponseError,
  type SymbolInformation,
  SymbolKind,
  type TextEdit,
  WorkspaceSymbolRequest,
} from 'vscode-languageserver';
import { placesOfId, sameId, wellIdAt, whyNoId } from '../features/well-id.ts';
import { matches, type WellSymbol } from '../features/well-symbols.ts';
import { canonical } from './address.ts';
import { placeOf, rangeOf } from './convert.ts';
import type { Registration } from './registration.ts';
import type { Session } from './session.ts';
import type { FolderLog } from './workspace.ts';

const refused = (reason: string): ResponseError<void> => new ResponseError(ErrorCodes.InvalidRequest, reason);

/** The logs that name a well, the asking one first. */
function filesNaming(id: string, uri: string, session: Session): readonly string[] {
  const names = ({ well, others }: FolderLog): boolean =>
    [well.id, ...others].some((field) => field !== null && sameId(field.text, id));
  const naming = session.folder.logs().filter((log) => names(log) && log.uri !== canonical(uri));
  return [uri, ...naming.map((log) => log.uri)];
}

async function placesIn(uri: string, id: string, session: Session) {
  const lines = session.snapshot(uri)?.lines ?? (await session.folder.linesOf(canonical(uri)));
  return lines === null ? [] : placesOfId(lines, id);
}

/** Every place in the folder that names a well. */
export async function locationsOfWell(
  id: string,
  uri: string,
  session: Session,
): Promise<readonly (Location & { isOwn: boolean })[]> {
  const files = filesNaming(id, uri, session);
  const found = await Promise.all(
    files.map(async (file) =>
      (await placesIn(file, id, session)).map(({ span, isOwn }) => ({ uri: file, range: rangeOf(span), isOwn })),
    ),
  );
  return found.flat();
}

/** Ids of the wells of the folder that are others than this one. */
const takenIds = (id: string, session: Session): readonly string[] =>
  session.folder.logs().flatMap(({ well }) => (well.id === null || sameId(well.id.text, id) ? [] : [well.id.text]));

const prepare: Registration = (connection, session) => {
  connection.onRequest(PrepareRenameRequest.type, ({ textDocument: { uri }, position }) => {
    const snapshot = session.snapshot(uri);
    const found = snapshot === null ? null : wellIdAt(snapshot, placeOf(position));
    if (found === null)
      return refused(
        l10n.t('Only the id of a well can be renamed: on its "well" line, or where a line names another well.'),
      );
    return { range: rangeOf(found.span), placeholder: found.text };
  });
};

const rename: Registration = (connection, session) => {
  connection.onRequest(RenameRequest.type, async ({ textDocument: { uri }, position, newName }) => {
    const snapshot = session.snapshot(uri);
    const found = snapshot === null ? null : wellIdAt(snapshot, placeOf(position));
    if (found === null) return refused(l10n.t('There is no id of a well here.'));
    await session.folder.whenRead();
    const why = whyNoId(newName, takenIds(found.text, session));
    if (why !== null) return refused(why);
    const changes: Record<string, TextEdit[]> = {};
    for (const { uri: file, range } of await locationsOfWell(found.text, uri, session))
      changes[file] = [...(changes[file] ?? []), { range, newText: newName }];
    return { changes };
  });
};

const symbolKinds: Readonly<Record<WellSymbol['kind'], SymbolKind>> = {
  well: SymbolKind.File,
  place: SymbolKind.Namespace,
  person: SymbolKind.Object,
  number: SymbolKind.Key,
  formation: SymbolKind.Array,
};

/** More are not shown; a longer query finds the rest. */
const mostSymbols = 500;

const symbolsOf = ({ uri, well, symbols }: FolderLog, query: string): SymbolInformation[] =>
  symbols
    .filter(({ name }) => matches(name, query))
    .map(({ kind, name, span }) => ({
      name,
      kind: symbolKinds[kind],
      // A well's own file is shown by the editor anyway.
      ...(kind !== 'well' && { containerName: well.id?.text ?? well.name }),
      location: { uri, range: rangeOf(span) },
    }));

const symbols: Registration = (connection, session) => {
  connection.onRequest(WorkspaceSymbolRequest.type, ({ query }) => {
    try {
      return session.folder
        .logs()
        .flatMap((log) => symbolsOf(log, query))
        .slice(0, mostSymbols);
    } catch (error) {
      session.fail(WorkspaceSymbolRequest.method, error);
      return [];
    }
  });
};

/** What goes through all the wells of the folder. */
export const wellRequests: readonly Registration[] = [prepare, rename, symbols];
