/** A place as the protocol gives it: line and UTF-16 column from 0. */
export interface Place {
  readonly line: number;
  readonly character: number;
}

/** A change of a document: of a range, or of the whole text where there is none. */
export interface TextChange {
  readonly range?: { readonly start: Place; readonly end: Place } | undefined;
  readonly text: string;
}

/** A text as its lines, each with the line end that follows it; the last has none. There is always one line. */
export interface LineText {
  readonly lines: readonly string[];
  readonly ends: readonly string[];
}

/** Lines of a text that took the place of others: `removed` lines from `first` on gave way to `inserted`. */
export interface LineEdit {
  readonly first: number;
  readonly removed: number;
  readonly inserted: readonly string[];
}

/** Splits a text at LF, CRLF and CR, and keeps which of them stood where. */
export function lineTextOf(text: string): LineText {
  const lines: string[] = [];
  const ends: string[] = [];
  let start = 0;
  for (const end of text.matchAll(/\r\n|\n|\r/g)) {
    lines.push(text.slice(start, end.index));
    ends.push(end[0]);
    start = end.index + end[0].length;
  }
  return { lines: [...lines, text.slice(start)], ends: [...ends, ''] };
}

/** The whole text. */
export const textOf = ({ lines, ends }: LineText): string => lines.map((line, at) => line + (ends[at] ?? '')).join('');

const between = (value: number, least: number, most: number): number =>
  Number.isFinite(value) ? Math.min(Math.max(Math.trunc(value), least), most) : least;

function inside({ lines }: LineText, { line, character }: Place): Place {
  if (line < 0) return { line: 0, character: 0 };
  const last = lines.length - 1;
  if (line > last) return { line: last, character: lines[last]?.length ?? 0 };
  const at = between(line, 0, last);
  return { line: at, character: between(character, 0, lines[at]?.length ?? 0) };
}

const isBefore = (a: Place, b: Place): boolean => a.line < b.line || (a.line === b.line && a.character < b.character);

function ordered(text: LineText, range: { readonly start: Place; readonly end: Place }): readonly [Place, Place] {
  const start = inside(text, range.start);
  const end = inside(text, range.end);
  return isBefore(end, start) ? [end, start] : [start, end];
}

const replaced = <T>(all: readonly T[], first: number, removed: number, inserted: readonly T[]): readonly T[] => [
  ...all.slice(0, first),
  ...inserted,
  ...all.slice(first + removed),
];

/** The line before takes part where its CR could join an LF that comes to stand behind it. */
const firstTouched = ({ ends }: LineText, { line, character }: Place): number =>
  character === 0 && ends[line - 1] === '\r' ? line - 1 : line;

/** The line after the last takes part where its LF could join a CR that comes to stand before it. */
function changeRange(text: LineText, change: TextChange & { range: { start: Place; end: Place } }) {
  const [start, end] = ordered(text, change.range);
  const first = firstTouched(text, start);
  const head = textOf({ lines: text.lines.slice(first, start.line), ends: text.ends.slice(first, start.line) });
  const before = head + (text.lines[start.line] ?? '').slice(0, start.character);
  const after = (text.lines[end.line] ?? '').slice(end.character) + (text.ends[end.line] ?? '');
  const isLast = end.line === text.lines.length - 1;
  const piece = lineTextOf(before + change.text + after);
  const lines = isLast ? piece.lines : piece.lines.slice(0, -1);
  const ends = isLast ? piece.ends : piece.ends.slice(0, -1);
  return { first, removed: end.line - first + 1, lines, ends };
}

const hasRange = (change: TextChange): change is TextChange & { range: { start: Place; end: Place } } =>
  change.range !== undefined && change.range !== null;

/** The text after a change, and which of its lines are new. Places outside the text are moved inside. */
export function applyChange(text: LineText, change: TextChange): { readonly text: LineText; readonly edit: LineEdit } {
  if (!hasRange(change)) {
    const whole = lineTextOf(change.text);
    return { text: whole, edit: { first: 0, removed: text.lines.length, inserted: whole.lines } };
  }
  const { first, removed, lines, ends } = changeRange(text, change);
  return {
    text: { lines: replaced(text.lines, first, removed, lines), ends: replaced(text.ends, first, removed, ends) },
    edit: { first, removed, inserted: lines },
  };
}

/** How many lines at the head and the foot of a text are the same as in an older one. */
export interface Unchanged {
  readonly head: number;
  readonly foot: number;
}

/** What is still unchanged after one more edit of a text of `length` lines; `before` is null where nothing had changed. */
export function unchangedAfter(before: Unchanged | null, edit: LineEdit, length: number): Unchanged {
  const head = edit.first;
  const foot = length - edit.first - edit.removed;
  return before === null ? { head, foot } : { head: Math.min(before.head, head), foot: Math.min(before.foot, foot) };
}

/** Every edit since an older text of `oldLength` lines, as one. */
export const editSince = ({ head, foot }: Unchanged, oldLength: number, lines: readonly string[]): LineEdit => ({
  first: head,
  removed: oldLength - head - foot,
  inserted: lines.slice(head, lines.length - foot),
});
