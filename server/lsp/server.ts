import { type Connection, DidChangeConfigurationNotification } from 'vscode-languageserver';
import { initializeResult } from './capabilities.ts';
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
  connection.onInitialized(
    guarded(session, 'watching settings', async () => {
      if (session.client.workspace?.didChangeConfiguration?.dynamicRegistration !== true) return;
      await connection.client.register(DidChangeConfigurationNotification.type, { section: 'drillhand' });
    }),
  );
  connection.onDidChangeConfiguration(
    guarded(session, 'reading settings', (to, { settings }) => to.settingsChanged(sectionOf(settings))),
  );
}

/** Serves one editor over a connection. The world says what day it is. */
export function startServer(connection: Connection, world: World): void {
  const session = new Session(connection, world);
  connection.onInitialize(({ capabilities, initializationOptions }) => {
    session.begin(capabilities ?? {}, initializationOptions);
    return initializeResult;
  });
  registerDocuments(connection, session);
  registerSettings(connection, session);
  for (const register of requests) register(connection, session);
  connection.listen();
}
