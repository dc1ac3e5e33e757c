import * as vscode from 'vscode';
import {
  type NotesEntry,
  notesLineRequest,
  type WriteNotesParams,
  type WrittenNotes,
  writeNotesRequest,
} from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';
import type { FromReview, Reviewed, ToReview } from '../webview/review-messages.ts';
import type { ReadReady } from './ask.ts';
import { reviewOptions, reviewPage, reviewWords } from './review-page.ts';

const viewType = 'drillhand.review';

/** Where lines can be put: a log that was open when the notes were read, and the cursor in it. */
export interface Target {
  readonly uri: vscode.Uri;
  readonly line: number;
}

/** One review: it shows the entries, takes what was decided, and writes the log. */
export class ReviewPanel {
  readonly panel: vscode.WebviewPanel;
  #reviewed: readonly Reviewed[] = [];

  constructor(
    extension: vscode.Uri,
    private readonly server: CheckerServer,
    private readonly read: ReadReady,
    private readonly target: Target | null,
  ) {
    const title = vscode.l10n.t('Review of field notes');
    this.panel = vscode.window.createWebviewPanel(viewType, title, vscode.ViewColumn.Active, reviewOptions(extension));
    this.panel.webview.onDidReceiveMessage((message: FromReview) => this.#take(message));
    this.panel.webview.html = reviewPage(this.panel.webview, extension);
  }

  async #take(message: FromReview): Promise<void> {
    try {
      if (message.type === 'ready') this.#show();
      else if (message.type === 'kept') this.#reviewed = message.reviewed;
      else if (message.type === 'look') await this.#look(message);
      else await this.#write(message.to, message.reviewed);
    } catch (error) {
      this.#send({ type: 'trouble', message: error instanceof Error ? error.message : String(error) });
    }
  }

  #show(): void {
    const { entries, troubles, parts } = this.read.answer;
    this.#send({
      type: 'show',
      entries,
      reviewed: this.#reviewed,
      parts,
      notes: troubles,
      canInsert: this.target !== null,
      words: reviewWords(),
    });
  }

  async #look({ entry, line, part, text }: FromReview & { type: 'look' }): Promise<void> {
    const says = await this.server.ask<string | null>(notesLineRequest, { part, text });
    this.#send({ type: 'looked', entry, line, says });
  }

  /** The entries as they were decided: what was not accepted is a comment alone. */
  #decided(reviewed: readonly Reviewed[]): NotesEntry[] {
    return this.read.answer.entries.map((entry, at) => {
      const { decision, lines } = reviewed[at] ?? { decision: 'open', lines: [] };
      const isAsRead = JSON.stringify(lines) === JSON.stringify(entry.lines.map(({ part, text }) => ({ part, text })));
      if (decision !== 'accepted') return { ...entry, lines: [], status: 'understood', why: [] };
      return isAsRead ? entry : { ...entry, lines, status: 'understood', why: [] };
    });
  }

  async #write(to: 'file' | 'cursor', reviewed: readonly Reviewed[]): Promise<void> {
    const into = to === 'cursor' ? this.target : null;
    if (into !== null) await vscode.workspace.openTextDocument(into.uri);
    const { units, bottomUp } = this.read.answer;
    const params: WriteNotesParams = {
      entries: this.#decided(reviewed),
      units,
      gallon: this.read.options.gallon,
      bottomUp,
      into: into && { uri: this.server.nameOf(into.uri) },
    };
    const { text, reason } = await this.server.ask<WrittenNotes>(writeNotesRequest, params);
    if (reason !== null) throw new Error(reason);
    if (into === null) await newLog(text);
    else await insert(into, text);
    this.panel.dispose();
  }

  #send(message: ToReview): void {
    void this.panel.webview.postMessage(message);
  }
}

async function newLog(content: string): Promise<void> {
  const document = await vscode.workspace.openTextDocument({ language: 'drillhand', content });
  await vscode.window.showTextDocument(document);
}

async function insert({ uri, line }: Target, text: string): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  const editor = await vscode.window.showTextDocument(document);
  const at = Math.min(line, document.lineCount - 1);
  const isBlank = document.lineAt(at).isEmptyOrWhitespace;
  const place = isBlank ? new vscode.Position(at, 0) : document.lineAt(at).range.end;
  await editor.edit((edit) => edit.insert(place, isBlank ? text : `\n${text.replace(/\n$/, '')}`));
}
