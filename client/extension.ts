import * as vscode from 'vscode';
import { registerExports } from './export/exports.ts';
import { registerWells } from './folder/wells-view.ts';
import { registerFurniture } from './furniture/furniture.ts';
import { registerLens } from './lens/lens.ts';
import { registerNotes } from './notes/notes.ts';
import { registerPages } from './pages/pages.ts';
import { Previews, registerPreviews } from './preview/previews.ts';
import { registerQuestions } from './questions/questions.ts';
import { CheckerServer } from './server.ts';
import { registerTyping } from './typing/typing.ts';

let server: CheckerServer | null = null;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const log = vscode.window.createOutputChannel('Drillhand', { log: true });
  server = new CheckerServer(context.asAbsolutePath('dist/server.cjs'), context.asAbsolutePath('client/l10n'), log);
  const previews = new Previews(context.extensionUri, server);
  context.subscriptions.push(
    log,
    vscode.commands.registerCommand('drillhand.restartServer', () => server?.restart()),
    vscode.commands.registerCommand('drillhand.showLog', () => log.show()),
    ...registerPreviews(previews),
    ...registerNotes(context, server),
    ...registerExports(context, server, previews),
    ...registerTyping(server),
    ...registerQuestions(server),
    ...registerFurniture(server),
    ...registerPages(server),
    ...registerLens(),
    ...registerWells(context, server),
  );
  await server.start();
}

export async function deactivate(): Promise<void> {
  await server?.stop();
  server = null;
}
