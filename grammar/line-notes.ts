import type { Allow, Interval, Item, Keyword, Line, Problem, Quantity, Text } from './tree.ts';

/** What somebody made of a line; a line has few. */
interface Note {
  readonly keeper: object;
  value: unknown;
  readonly next: Note | null;
}

/** A line as it was read. */
export class ReadLine implements Line {
  readonly text: string;
  readonly row: string | null;
  readonly section: string | null;
  readonly keyword: Keyword | null;
  readonly depths: Interval | Quantity | null;
  readonly items: readonly Item[];
  readonly remark: Text | null;
  readonly comment: Text | null;
  readonly allow: Allow | null;
  readonly problems: readonly Problem[];
  #note: Note | null = null;

  constructor(line: Line) {
    this.text = line.text;
    this.row = line.row;
    this.section = line.section;
    this.keyword = line.keyword;
    this.depths = line.depths;
    this.items = line.items;
    this.remark = line.remark;
    this.comment = line.comment;
    this.allow = line.allow;
    this.problems = line.problems;
  }

  static noteOf(line: ReadLine, keeper: object): unknown {
    let note = line.#note;
    while (note !== null && note.keeper !== keeper) note = note.next;
    return note?.value;
  }

  static keep(line: ReadLine, keeper: object, value: unknown): void {
    let note = line.#note;
    while (note !== null && note.keeper !== keeper) note = note.next;
    if (note === null) line.#note = { keeper, value, next: line.#note };
    else note.value = value;
  }
}

/** What is made of lines, kept out of sight for as long as each line lives; quicker than a weak map where it can be. */
export class LineNotes<T extends object> {
  readonly #others = new WeakMap<Line, T>();

  get(line: Line): T | undefined {
    return line instanceof ReadLine ? (ReadLine.noteOf(line, this) as T | undefined) : this.#others.get(line);
  }

  set(line: Line, note: T): void {
    if (line instanceof ReadLine) ReadLine.keep(line, this, note);
    else this.#others.set(line, note);
  }
}

/** The function with its answers kept for as long as each line lives: a line stays the same object while nobody edits it. */
export function rememberedOfLine<T>(work: (line: Line) => T): (line: Line) => T {
  const notes = new LineNotes<{ readonly value: T }>();
  return (line) => {
    let note = notes.get(line);
    if (note === undefined) {
      note = { value: work(line) };
      notes.set(line, note);
    }
    return note.value;
  };
}
