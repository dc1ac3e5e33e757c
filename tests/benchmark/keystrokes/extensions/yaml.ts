import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';

/** YAML's own language server in the editor, with the schema of the workspace. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = process.env.DRILLHAND_KEYSTROKES_YAML ?? '';
  const run = { module, transport: TransportKind.ipc };
  const selector = [{ language: 'yaml' }];
  const client = new LanguageClient(
    'yaml',
    'YAML',
    { run, debug: run },
    {
      documentSelector: selector,
      synchronize: { configurationSection: ['yaml', 'editor', 'files'] },
    },
  );
  context.subscriptions.push(client);
  await client.start();
}
