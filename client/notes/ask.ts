import { Buffer } from 'node:buffer';
import * as vscode from 'vscode';
import {
  type NotesAnswer,
  type NotesOptions,
  type NotesQuestion,
  type ReadNotesParams,
  readNotesRequest,
} from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

/** Notes on their way in: their text, or the bytes of a file. */
export type Notes = Pick<ReadNotesParams, 'text' | 'base64'>;

/** Notes that were read, and what was answered for them. */
export interface ReadReady {
  readonly answer: NotesAnswer;
  readonly options: NotesOptions;
}

const unanswered: NotesOptions = { units: null, gallon: null, dates: null, layers: null, columns: null };

type Source = 'selection' | 'clipboard' | 'file';

interface SourceItem extends vscode.QuickPickItem {
  readonly source: Source;
}

const selectedText = (): string => {
  const editor = vscode.window.activeTextEditor;
  return editor ? editor.document.getText(editor.selection) : '';
};

function sources(): SourceItem[] {
  const isSelected = selectedText().trim() !== '';
  return [
    ...(isSelected ? [{ label: vscode.l10n.t('The selected text'), source: 'selection' as const }] : []),
    { label: vscode.l10n.t('The clipboard'), source: 'clipboard' },
    { label: vscode.l10n.t('A file: text or CSV'), source: 'file' },
  ];
}

async function fromFile(): Promise<Notes | null> {
  const [file] =
    (await vscode.window.showOpenDialog({ title: vscode.l10n.t('Field notes'), canSelectMany: false })) ?? [];
  return file ? notesInFile(file) : null;
}

/** The bytes of a file, whose encoding the server finds out. */
export async function notesInFile(file: vscode.Uri): Promise<Notes> {
  const bytes = await vscode.workspace.fs.readFile(file);
  return { text: null, base64: Buffer.from(bytes).toString('base64') };
}

/** Asks where the notes are, and brings them; null where the person thinks better of it. */
export async function askForNotes(): Promise<Notes | null> {
  const chosen = await vscode.window.showQuickPick(sources(), { placeHolder: vscode.l10n.t('Where are the notes?') });
  if (chosen === undefined) return null;
  if (chosen.source === 'file') return fromFile();
  const text = chosen.source === 'selection' ? selectedText() : await vscode.env.clipboard.readText();
  return { text, base64: null };
}

interface AnswerItem extends vscode.QuickPickItem {
  readonly value: string | null;
}

const answerNames = (): Readonly<Record<string, string>> => ({
  m: vscode.l10n.t('Metres'),
  ft: vscode.l10n.t('Feet'),
  us: vscode.l10n.t('US gallons'),
  imp: vscode.l10n.t('Imperial gallons'),
  dmy: vscode.l10n.t('The day is first'),
  mdy: vscode.l10n.t('The month is first'),
  thickness: vscode.l10n.t('Its thickness'),
  bases: vscode.l10n.t('The depth of its base'),
  tops: vscode.l10n.t('The depth of its top'),
});

const questionNames = (): Readonly<Record<NotesQuestion['about'], string>> => ({
  units: vscode.l10n.t('Are the depths in metres or in feet?'),
  gallon: vscode.l10n.t('Which gallon is meant?'),
  dates: vscode.l10n.t('How are the dates written?'),
  layers: vscode.l10n.t('What is the one figure of each layer?'),
  columns: vscode.l10n.t('Which column is what?'),
});

/** `undefined` where the person breaks off, null where the question stays open. */
async function choose(question: NotesQuestion): Promise<string | null | undefined> {
  const names = answerNames();
  const known: AnswerItem[] = question.answers.map((value) => ({ label: names[value] ?? value, value }));
  const open = question.blocking ? [] : [{ label: vscode.l10n.t('Leave it open'), value: null }];
  const chosen = await vscode.window.showQuickPick<AnswerItem>([...known, ...open], {
    title: questionNames()[question.about],
    placeHolder: vscode.l10n.t('Line {0}: {1}', question.line, question.says),
    ignoreFocusOut: true,
  });
  return chosen?.value;
}

/** A map of columns can be mended before it is used. */
const typeColumns = (question: NotesQuestion): Thenable<string | undefined> =>
  vscode.window.showInputBox({
    title: questionNames().columns,
    prompt: vscode.l10n.t(
      'from, to, interval, thickness, description, colour, detail, remark, well or water = a column’s name or number',
    ),
    value: question.answers[0] ?? 'from=1,to=2,description=3',
    ignoreFocusOut: true,
  });

/** Reads notes, asking until nothing that must be known is open; null where the person breaks off. */
export async function readAsking(server: CheckerServer, notes: Notes): Promise<ReadReady | null> {
  let options = unanswered;
  const asked = new Set<string>();
  for (;;) {
    const params: ReadNotesParams = { ...notes, options };
    const answer = await server.ask<NotesAnswer>(readNotesRequest, params);
    if (answer.reason !== null) throw new Error(answer.reason);
    const question = answer.questions.find(({ about, blocking }) => blocking || !asked.has(about));
    if (question === undefined) return { answer, options };
    const value = await (question.about === 'columns' ? typeColumns(question) : choose(question));
    if (value === undefined) return null;
    asked.add(question.about);
    options = { ...options, [question.about]: value };
  }
}
