import type { Allow, Interval, Item, Keyword, Line, Problem, Quantity, Text } from './tree.ts';

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
  #keeper: object | null = null;
  #note: unknown = undefined;

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
    return line.#keeper === keeper ? line.#note : undefined;
  }

  /** True where the note is kept: a line has room for the notes of one keeper. */
  static keep(line: ReadLine, keeper: object, note: unknown): boolean {
    if (line.#keeper !== null && line.#keeper !== keeper) return false;
    line.#keeper = keeper;
    line.#note = note;
    return true;
  }
}

/** What is made of lines, kept out of sight for as long as each line lives; quicker than a weak map where it can be. */
export class LineNotes<T extends object> {
  readonly #others = new WeakMap<Line, T>();

  get(line: Line): T | undefined {
    const note = line instanceof ReadLine ? (ReadLine.noteOf(line, this) as T | undefined) : undefined;
    return note ?? this.#others.get(line);
  }

  set(line: Line, note: T): void {
    if (!(line instanceof ReadLine) || !ReadLine.keep(line, this, note)) this.#others.set(line, note);
  }
}
