import * as vscode from 'vscode';
import { type NextItem, type NextItemParams, nextItemRequest, type Offered } from '../../server/lsp/protocol.ts';
import type { CheckerServer } from '../server.ts';

const command = 'drillhand.nextItem';
const inLineContext = 'drillhand.cursorBehindText';
const beforeUnitContext = 'drillhand.cursorBeforeUnit';

/** What was put in last, and the text as it then stood. */
interface Memory {
  readonly uri: string;
  readonly version: number;
  readonly offered: Offered;
}

/** What was put in behind the place that is written over: a unit, which Enter leaves on its line. */
interface Unit {
  readonly uri: string;
  readonly line: number;
  readonly text: string;
}

const isLog = (editor: vscode.TextEditor | undefined): editor is vscode.TextEditor =>
  editor?.document.languageId === 'drillhand';

/** True where Tab may have something to do: one cursor, with text before it on its line, that is no comment. */
function isBehindText({ document, selection, selections }: vscode.TextEditor): boolean {
  if (selections.length !== 1 || !selection.isSingleLine) return false;
  const before = document.lineAt(selection.start.line).text.slice(0, selection.end.character).trimStart();
  return before !== '' && !before.startsWith('#');
}

/** What stands behind the selection, to the end of its line. */
const behindSelection = ({ document, selection }: vscode.TextEditor): string =>
  document.lineAt(selection.end.line).text.slice(selection.end.character);

function unitBehind(editor: vscode.TextEditor): Unit | null {
  const text = behindSelection(editor);
  if (text.trim() === '') return null;
  return { uri: editor.document.uri.toString(), line: editor.selection.end.line, text };
}

const isBefore = (editor: vscode.TextEditor, { uri, line, text }: Unit): boolean =>
  editor.document.uri.toString() === uri && editor.selection.end.line === line && behindSelection(editor) === text;

const rangeOf = (line: number, start: number, end: number): vscode.Range => new vscode.Range(line, start, line, end);

async function make({ edits, select }: NextItem, editor: vscode.TextEditor): Promise<boolean> {
  const done =
    edits.length === 0 ||
    (await editor.edit((edit) => {
      for (const { span, text } of edits) edit.replace(rangeOf(span.line, span.start, span.end), text);
    }));
  if (done) editor.selection = new vscode.Selection(select.line, select.start, select.line, select.end);
  return done;
}

/**
 * Tab behind the text of a line goes to what the line lacks; where it lacks nothing, it does what it always does. A unit
 * that it has put behind the cursor stays on its line when Enter begins the next one.
 */
export function registerNextItem(server: CheckerServer): vscode.Disposable[] {
  let memory: Memory | null = null;
  let unit: Unit | null = null;

  const paramsFor = ({ document, selection }: vscode.TextEditor): NextItemParams => {
    const isFresh = memory?.uri === document.uri.toString() && memory.version === document.version;
    const { start, end } = selection;
    return {
      textDocument: { uri: server.nameOf(document.uri) },
      selected: { line: end.line, start: start.character, end: end.character },
      offered: isFresh ? (memory?.offered ?? null) : null,
    };
  };

  const goOn = async (editor: vscode.TextEditor): Promise<void> => {
    const { version } = editor.document;
    const next = await server.ask<NextItem | null>(nextItemRequest, paramsFor(editor)).catch(() => null);
    if (editor.document.version !== version) return;
    memory = null;
    unit = null;
    if (next === null) {
      await vscode.commands.executeCommand('tab');
      return;
    }
    if (!(await make(next, editor))) return;
    const { uri } = editor.document;
    if (next.offered !== null) {
      memory = { uri: uri.toString(), version: editor.document.version, offered: next.offered };
      unit = unitBehind(editor);
      tell(editor);
    }
    if (next.suggest) await vscode.commands.executeCommand('editor.action.triggerSuggest');
  };

  const known = new Map<string, boolean>();
  const set = (context: string, holds: boolean): void => {
    if ((known.get(context) ?? false) !== holds) void vscode.commands.executeCommand('setContext', context, holds);
    known.set(context, holds);
  };
  const tell = (editor: vscode.TextEditor | undefined): void => {
    set(inLineContext, isLog(editor) && isBehindText(editor));
    set(beforeUnitContext, isLog(editor) && unit !== null && isBefore(editor, unit));
  };

  tell(vscode.window.activeTextEditor);
  return [
    vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => tell(textEditor)),
    vscode.window.onDidChangeActiveTextEditor(tell),
    vscode.commands.registerTextEditorCommand(command, (editor) => goOn(editor)),
  ];
}
