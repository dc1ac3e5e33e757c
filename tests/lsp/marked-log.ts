import type { Position, Range, TextEdit } from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { readMarked } from '../rules/marked.ts';
import type { Editor } from './editor.ts';

/** A log that an editor has open, with the place of `|` and what stood between `[[` and `]]`. */
export interface MarkedLog {
  readonly uri: string;
  readonly text: string;
  readonly position: Position;
  readonly ranges: readonly Range[];
}

/** Where the cursor stands, without which a text is marked by ranges alone. */
const cursor = '|';

function cursorIn(marked: string): Position {
  const lines = marked.split('\n');
  const line = lines.findIndex((each) => each.includes(cursor));
  const before = lines[line]?.slice(0, lines[line]?.indexOf(cursor)) ?? '';
  return { line: Math.max(0, line), character: before.replace(/\[\[|\]\]/g, '').length };
}

let opened = 0;

/** Opens a text with marks in it, as a log of its own, and waits until it has been checked. */
export async function openMarked(editor: Editor, marked: string, folder = 'file:///marked'): Promise<MarkedLog> {
  const { text, spans } = readMarked(marked.replace(cursor, ''));
  opened += 1;
  const uri = `${folder}/${opened}.well`;
  await editor.open(uri, text);
  await editor.report(uri, 1);
  const ranges = spans.map(({ line, start, end }) => ({
    start: { line, character: start },
    end: { line, character: end },
  }));
  return { uri, text, position: cursorIn(marked), ranges };
}

/** What a request about the cursor's place is sent with. */
export const about = ({ uri, position }: MarkedLog, more: object = {}): object => ({
  textDocument: { uri },
  position,
  ...more,
});

/** The text after edits, as a general library of the protocol makes them. */
export const withEdits = ({ uri, text }: MarkedLog, edits: readonly TextEdit[]): string =>
  TextDocument.applyEdits(TextDocument.create(uri, 'drillhand', 1, text), [...edits]);

/** The text with `[[` and `]]` round ranges of it. */
export const withMarks = (log: MarkedLog, ranges: readonly Range[]): string =>
  withEdits(
    log,
    ranges.flatMap(({ start, end }) => [
      { range: { start, end: start }, newText: '[[' },
      { range: { start: end, end }, newText: ']]' },
    ]),
  );
