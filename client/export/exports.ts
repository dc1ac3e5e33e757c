import { Buffer } from 'node:buffer';
import * as vscode from 'vscode';
import {
  type ExportAnswer,
  type ExportChoice,
  type ExportParams,
  exportFormatsRequest,
  exportRequest,
} from '../../server/lsp/protocol.ts';
import type { Previews } from '../preview/previews.ts';
import type { CheckerServer } from '../server.ts';
import { pngOf } from './png.ts';

interface Made {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A format of the list, or the record page sent to the browser to be printed. */
interface Item extends vscode.QuickPickItem {
  readonly format: ExportChoice | null;
}

const nameOf = (uri: vscode.Uri): string => (uri.path.split('/').at(-1) ?? '').replace(/\.well$/, '');

const besides = (uri: vscode.Uri, name: string): vscode.Uri => vscode.Uri.joinPath(uri, '..', name);

/** Writes the record of a log for others, and sends it to the printer by way of the browser. */
class Exports {
  constructor(
    private readonly context: vscode.ExtensionContext,
    private readonly server: CheckerServer,
    private readonly previews: Previews,
  ) {}

  /** Asks what is wanted of the log, and makes it. */
  async choose(resource: vscode.Uri | undefined, withPrint: boolean): Promise<void> {
    const uri = resource ?? vscode.window.activeTextEditor?.document.uri;
    if (uri === undefined) return;
    try {
      await vscode.workspace.openTextDocument(uri);
      const item = await vscode.window.showQuickPick(this.#items(withPrint), {
        placeHolder: vscode.l10n.t('What to make of {0}', nameOf(uri)),
      });
      if (item?.format) await this.#save(uri, item.format);
      else if (item) await this.#print(uri);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      void vscode.window.showErrorMessage(vscode.l10n.t('Nothing was written: {0}', reason));
    }
  }

  async #items(withPrint: boolean): Promise<Item[]> {
    const formats = await this.server.ask<readonly ExportChoice[]>(exportFormatsRequest, {});
    const listed = formats.map((format) => ({ label: format.title, description: `.${format.extension}`, format }));
    const label = vscode.l10n.t('Print: open the record page in the browser');
    return withPrint ? [{ label, format: null }, ...listed] : listed;
  }

  async #answer(uri: vscode.Uri, format: string): Promise<ExportAnswer> {
    const params: ExportParams = { textDocument: { uri: this.server.nameOf(uri) }, format, name: nameOf(uri) };
    const answer = await this.server.ask<ExportAnswer>(exportRequest, params);
    if (answer.reason !== null) throw new Error(answer.reason);
    return answer;
  }

  /** The files of a format. The picture is drawn by the preview: what draws it on the command line is too large to ship. */
  async #make(uri: vscode.Uri, id: string): Promise<{ files: readonly Made[]; left: readonly string[] }> {
    const { files, left } = await this.#answer(uri, id === 'png' ? 'svg' : id);
    const bytesOf = async ({ name, text, base64 }: ExportAnswer['files'][number]): Promise<Made> => {
      if (id !== 'png') return { name, bytes: Buffer.from(text ?? base64 ?? '', text === null ? 'base64' : 'utf8') };
      const bytes = await pngOf(text ?? '', uri, this.context.extensionUri, this.previews);
      return { name: name.replace(/svg$/, 'png'), bytes };
    };
    return { files: await Promise.all(files.map(bytesOf)), left };
  }

  async #save(uri: vscode.Uri, format: ExportChoice): Promise<void> {
    const { files, left } = await this.#make(uri, format.id);
    const written = format.many ? await this.#writeInto(uri, files) : await this.#writeOne(uri, format, files[0]);
    if (written === null) return;
    const sentences = [vscode.l10n.t('Wrote {0}.', vscode.workspace.asRelativePath(written)), ...left];
    const open = vscode.l10n.t('Open');
    if ((await vscode.window.showInformationMessage(sentences.join(' '), open)) === open)
      await vscode.env.openExternal(written);
  }

  async #writeOne(uri: vscode.Uri, format: ExportChoice, file: Made | undefined): Promise<vscode.Uri | null> {
    if (file === undefined) return null;
    const defaultUri = besides(uri, file.name);
    const target = await vscode.window.showSaveDialog({ defaultUri, filters: { [format.title]: [format.extension] } });
    if (target === undefined) return null;
    await vscode.workspace.fs.writeFile(target, file.bytes);
    return target;
  }

  async #writeInto(uri: vscode.Uri, files: readonly Made[]): Promise<vscode.Uri | null> {
    const [folder] =
      (await vscode.window.showOpenDialog({
        canSelectFolders: true,
        canSelectFiles: false,
        defaultUri: besides(uri, ''),
        openLabel: vscode.l10n.t('Write here'),
      })) ?? [];
    if (folder === undefined) return null;
    for (const { name, bytes } of files) await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), bytes);
    return folder;
  }

  /** Puts the record page where the browser can open it; where none opens, it is saved instead. */
  async #print(uri: vscode.Uri): Promise<void> {
    const { files } = await this.#make(uri, 'html');
    const [file] = files;
    if (file === undefined) return;
    const page = vscode.Uri.joinPath(this.context.globalStorageUri, file.name);
    await vscode.workspace.fs.writeFile(page, file.bytes);
    if (await vscode.env.openExternal(page)) return;
    const formats = await this.server.ask<readonly ExportChoice[]>(exportFormatsRequest, {});
    const html = formats.find(({ id }) => id === 'html');
    if (html) await this.#save(uri, html);
  }
}

export function registerExports(
  context: vscode.ExtensionContext,
  server: CheckerServer,
  previews: Previews,
): vscode.Disposable[] {
  const exports = new Exports(context, server, previews);
  return [
    vscode.commands.registerCommand('drillhand.export', (uri?: vscode.Uri) => exports.choose(uri, false)),
    vscode.commands.registerCommand('drillhand.printRecord', (uri?: vscode.Uri) => exports.choose(uri, true)),
  ];
}
