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
  #notes: unknown[] | null = null;

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

  static noteOf(line: ReadLine, keeper: number): unknown {
    return line.#notes?.[keeper];
  }

  static keep(line: ReadLine, keeper: number, note: unknown): void {
    line.#notes ??= new Array<unknown>(keepers).fill(undefined);
    line.#notes[keeper] = note;
  }
}

/** How many keep notes of lines; each has a place of its own in the notes of a line. */
let keepers = 0;

/** What is made of lines, kept out of sight for as long as each line lives; quicker than a weak map where it can be. */
export class LineNotes<T extends object> {
  readonly #others = new WeakMap<Line, T>();
  readonly #keeper = keepers++;

  get(line: Line): T | undefined {
    return line instanceof ReadLine ? (ReadLine.noteOf(line, this.#keeper) as T | undefined) : this.#others.get(line);
  }

  set(line: Line, note: T): void {
    if (line instanceof ReadLine) ReadLine.keep(line, this.#keeper, note);
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
