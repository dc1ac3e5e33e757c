/** The unit of depths that are written without one. */
export type DepthUnit = 'm' | 'ft';

/** The parts of a log, in the order in which they are written. */
export const parts = ['head', 'hole', 'strata', 'casing', 'drilling', 'water', 'test', 'work', 'abandonment'] as const;
export type Part = (typeof parts)[number];

export const isPart = (name: string): name is Part => parts.some((part) => part === name);

/** A line of notation, without indentation, and the part of the log that it belongs to. */
export interface NotationLine {
  readonly part: Part;
  readonly text: string;
}

export type Status = 'understood' | 'partly' | 'not';

/** What became of one line of the notes, or of one row of a table. */
export interface Entry {
  /** Its lines in the notes, counted from 1. */
  readonly first: number;
  readonly last: number;
  readonly source: readonly string[];
  readonly lines: readonly NotationLine[];
  readonly status: Status;
  /** Why it was not understood as a whole; empty for what was. */
  readonly why: readonly string[];
}

/** What single values of a list of layers are, where the notes leave it open. */
export type LayerValues = 'thickness' | 'bases' | 'tops';

export interface ReadOptions {
  readonly units: DepthUnit | null;
  readonly gallon: 'us' | 'imp' | null;
  readonly dates: 'dmy' | 'mdy' | null;
  readonly layers: LayerValues | null;
  /** A column map as `--columns` takes it: `from=TopDepth,to=BotDepth,description=Litho`. */
  readonly columns: string | null;
  /** The rule pack that the log names. */
  readonly pack: string | null;
}

export const openOptions: ReadOptions = {
  units: null,
  gallon: null,
  dates: null,
  layers: null,
  columns: null,
  pack: null,
};

/** Something that only the person who knows the well can say. */
export interface Question {
  readonly about: 'units' | 'gallon' | 'dates' | 'layers' | 'columns';
  /** The line of the notes that raises it, counted from 1. */
  readonly line: number;
  readonly says: string;
  /** Values of the option that answers it. */
  readonly answers: readonly string[];
  /** True where nothing is written until it is answered. */
  readonly blocking: boolean;
}

/** A fault of the file as a whole, not of what a line says. */
export interface Trouble {
  readonly line: number;
  readonly says: string;
}

export interface ReadNotes {
  readonly entries: readonly Entry[];
  /** The unit of bare depths; null where no depth needs one. */
  readonly units: DepthUnit | null;
  readonly questions: readonly Question[];
  readonly troubles: readonly Trouble[];
  /** True where the notes list the ground from the bottom up. */
  readonly bottomUp: boolean;
  /** The whole notation text; empty as long as a blocking question is open. */
  readonly text: string;
}
