import * as vscode from 'vscode';
import { registerFurniture } from './furniture/furniture.ts';
import { registerPreviews } from './preview/previews.ts';
import { CheckerServer } from './server.ts';
import { registerTyping } from './typing/typing.ts';

let server: CheckerServer | null = null;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const log = vscode.window.createOutputChannel('Drillhand', { log: true });
  server = new CheckerServer(context.asAbsolutePath('dist/server.cjs'), log);
  context.subscriptions.push(
    log,
    vscode.commands.registerCommand('drillhand.restartServer', () => server?.restart()),
    vscode.commands.registerCommand('drillhand.showLog', () => log.show()),
    ...registerPreviews(context, server),
    ...registerTyping(server),
    ...registerFurniture(server),
  );
  await server.start();
}

export async function deactivate(): Promise<void> {
  await server?.stop();
  server = null;
}
