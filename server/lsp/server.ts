import {
  type Connection,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  type InitializeParams,
} from 'vscode-languageserver';
import { canonical } from './address.ts';
import { initializeResult } from './capabilities.ts';
import { speakAs } from './language.ts';
import { requests } from './requests.ts';
import { Session, type World } from './session.ts';

type Handler<P> = (session: Session, params: P) => void | Promise<void>;

/** A notification handler whose failure is logged and goes no further. */
const guarded =
  <P>(session: Session, what: string, handler: Handler<P>) =>
  async (params: P): Promise<void> => {
    try {
      await handler(session, params);
    } catch (error) {
      session.fail(what, error);
    }
  };

/** The `drillhand` part of what an editor sends with a change of settings. */
const sectionOf = (settings: unknown): unknown =>
  typeof settings === 'object' && settings !== null && 'drillhand' in settings ? settings.drillhand : settings;

function registerDocuments(connection: Connection, session: Session): void {
  connection.onDidOpenTextDocument(
    guarded(session, 'opening', (to, { textDocument: { uri, version, text } }) => to.open(uri, version, text)),
  );
  connection.onDidChangeTextDocument(
    guarded(session, 'changing', (to, { textDocument: { uri, version }, contentChanges }) =>
      to.change(uri, version, contentChanges),
    ),
  );
  connection.onDidCloseTextDocument(guarded(session, 'closing', (to, { textDocument: { uri } }) => to.close(uri)));
}

function registerSettings(connection: Connection, session: Session): void {
  connection.onDidChangeConfiguration(
    guarded(session, 'reading settings', (to, { settings }) => to.settingsChanged(sectionOf(settings))),
  );
}

async function watchSettings(connection: Connection, { client }: Session): Promise<void> {
  if (client.workspace?.didChangeConfiguration?.dynamicRegistration !== true) return;
  await connection.client.register(DidChangeConfigurationNotification.type, { section: 'drillhand' });
}

/** Files of a workspace that say something of its wells. */
const watched = ['**/*.well', '**/*.wellrules.json', '**/drillhand.json'];

function registerFiles(connection: Connection, session: Session): void {
  connection.onDidChangeWatchedFiles(
    guarded(session, 'taking in changed files', (to, { changes }) =>
      to.folder.changed(changes.map(({ uri }) => canonical(uri))),
    ),
  );
}

async function watchFiles(connection: Connection, { client }: Session): Promise<void> {
  if (client.workspace?.didChangeWatchedFiles?.dynamicRegistration !== true) return;
  const watchers = watched.map((globPattern) => ({ globPattern }));
  await connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
}

/** Keeps the set of open folders as the editor tells it. */
function followFolders(connection: Connection, session: Session, roots: Set<string>): void {
  if (session.client.workspace?.workspaceFolders !== true) return;
  connection.workspace.onDidChangeWorkspaceFolders(
    guarded(session, 'changing folders', async (to, { added, removed }) => {
      for (const { uri } of removed) roots.delete(canonical(uri));
      for (const { uri } of added) roots.add(canonical(uri));
      await to.folder.open([...roots]);
    }),
  );
}

const foldersIn = ({ workspaceFolders, rootUri }: InitializeParams): string[] =>
  (workspaceFolders?.map(({ uri }) => uri) ?? [rootUri ?? '']).filter((uri) => uri !== '').map(canonical);

/** Serves one editor over a connection. The world says what day it is, and reads files. */
export function startServer(connection: Connection, world: World): void {
  const session = new Session(connection, world);
  const roots = new Set<string>();
  connection.onInitialize((params) => {
    const trouble = speakAs(params.initializationOptions);
    if (trouble !== null) session.warn(trouble);
    session.begin(params.capabilities ?? {}, params.initializationOptions);
    for (const uri of foldersIn(params)) roots.add(uri);
    return initializeResult();
  });
  connection.onInitialized(
    guarded(session, 'beginning', async (to) => {
      followFolders(connection, to, roots);
      await Promise.all([watchSettings(connection, to), watchFiles(connection, to), to.folder.open([...roots])]);
    }),
  );
  registerDocuments(connection, session);
  registerSettings(connection, session);
  registerFiles(connection, session);
  for (const register of requests) register(connection, session);
  connection.listen();
}
