import type { Columns } from './span.ts';
import type { Description } from './terms/description.ts';
import type { ListId, Term } from './terms/term.ts';
import type { Unit } from './units.ts';

/**
 * A measured value as it stands in the text. `number` is null for `?`; `unit` is null where the file's own unit
 * counts. A depth above ground has `above`; `td` is the bottom of the hole.
 */
export interface Quantity extends Columns {
  readonly kind: 'quantity';
  readonly number: number | null;
  /** The upper end of `20-25 L/min`; null for one value. */
  readonly high: number | null;
  readonly unit: Unit | null;
  /** Columns of the unit where it stands beside this number. */
  readonly unitAt: Columns | null;
  /** Digits after the point as written; 0 for fractions. */
  readonly decimals: number;
  /** How the number was written: `12'6"`, `6 1/4`, or plain. */
  readonly form: 'plain' | 'feet-inches' | 'fraction' | 'elapsed';
  readonly approximate: boolean;
  readonly doubtful: boolean;
  readonly bound: '<' | '>' | null;
  /** A plus sign stands before it: adds on a rate, above ground on a depth. */
  readonly plus: boolean;
  /** A minus sign stands before it (only in `place` and `ground`). */
  readonly minus: boolean;
  readonly td: boolean;
  readonly datum: 'toc' | 'bgs' | null;
  /** The number without marks and unit, as written: `38.5`, `12'6"`, `.3`. */
  readonly figure: string;
}

/** `a - b` of lengths; `from` is null where the line begins with the dash. */
export interface Interval extends Columns {
  readonly kind: 'interval';
  readonly from: Quantity | null;
  readonly to: Quantity;
  /** Columns of the dash. */
  readonly dash: Columns;
}

/** `a x b`: a size (outside x wall) or a count times an amount; in a volume slot, count times volume. */
export interface Product extends Columns {
  readonly kind: 'product';
  readonly factors: readonly [Quantity, Quantity];
  /** A count unit after the whole, as in `9 x 40 kg bags`. */
  readonly counted: Unit | null;
}

/** A date, a time of day, or both, as ISO 8601 texts. */
export interface Moment extends Columns {
  readonly kind: 'moment';
  readonly date: string | null;
  readonly time: string | null;
  readonly approximate: boolean;
  readonly doubtful: boolean;
}

export interface Period extends Columns {
  readonly kind: 'period';
  readonly from: Moment;
  readonly to: Moment;
}

/** `20/40`: a sand grading by sieve numbers. */
export interface Grading extends Columns {
  readonly kind: 'grading';
  readonly coarse: number;
  readonly fine: number;
}

/** `#10`: a slot or sieve number. */
export interface HashNumber extends Columns {
  readonly kind: 'hash-number';
  readonly number: number;
}

/** A lone `?`. */
export interface Unknown extends Columns {
  readonly kind: 'unknown';
}

/** Text kept as written. */
export interface Text extends Columns {
  readonly kind: 'text';
  readonly text: string;
}

/** A run of words that a list of terms knows. */
export interface TermValue extends Columns {
  readonly kind: 'term';
  readonly list: ListId;
  readonly term: Term;
}

/** A question mark in a description: of the word that it is glued to, or of what nobody wrote down. */
export interface Doubt extends Columns {
  readonly about: 'word' | 'more';
}

/** What a strata line says of the ground. */
export interface DescriptionValue extends Columns {
  readonly kind: 'description';
  readonly description: Description;
  /** The canonical long form. */
  readonly long: string;
  readonly doubts: readonly Doubt[];
}

/** Several values of one slot, as `1.5 4 6.7`. */
export interface List extends Columns {
  readonly kind: 'list';
  readonly values: readonly (Quantity | Product)[];
}

/** A label that stands for itself, as `dd`, `driven`, `temporary`. */
export interface Flag extends Columns {
  readonly kind: 'flag';
}

export type Value =
  | Quantity
  | Interval
  | Product
  | Moment
  | Period
  | Grading
  | HashNumber
  | Unknown
  | Text
  | TermValue
  | DescriptionValue
  | List
  | Flag;

/** A value in its slot of the table row. */
export interface Item extends Columns {
  /** The name of the slot, as in the table. */
  readonly slot: string;
  /** The label before the value; `term` where a term of a list is the label (`septic 31`). */
  readonly label: (Columns & { readonly written: string; readonly term: Term | null }) | null;
  readonly value: Value;
}

/** What went wrong on a line, as data; the rules put it into words. */
export interface Problem extends Columns {
  readonly code: ProblemCode;
  /** What stands there, as written. */
  readonly written: string;
  /** What was probably meant, each a replacement for the columns; never applied in silence. */
  readonly meant: readonly string[];
  /** Other facts, by name. */
  readonly facts: Readonly<Record<string, string>>;
}

export type ProblemCode =
  | 'decimal-comma'
  | 'two-points'
  | 'bad-date'
  | 'bad-time'
  | 'bad-ratio'
  | 'unclosed-quote'
  | 'stray-mark'
  | 'unreadable'
  | 'unknown-term'
  | 'unknown-keyword'
  | 'near-keyword'
  | 'unknown-section'
  | 'misplaced-keyword'
  | 'missing-depth'
  | 'unexpected-depth'
  | 'interval-without-dash'
  | 'wrong-kind'
  | 'no-place'
  | 'second-value'
  | 'missing-label'
  | 'slot-word-missing'
  | 'nominal-or-outside'
  | 'allow-without-reason'
  | 'elapsed-time-form'
  | 'missing-value'
  | 'unknown-unit'
  | 'second-keyword'
  | 'no-section'
  | 'line-too-long';

export interface Allow extends Columns {
  readonly rules: readonly (Columns & { readonly id: string })[];
  readonly reason: string;
}

export interface Keyword extends Columns {
  /** The table row's id. */
  readonly id: string;
  readonly written: string;
  /** True where a near miss was read as it. */
  readonly near: boolean;
}

/**
 * One line, read. It knows nothing of its line number, so that it is the same object as long as its text and the
 * section it stands in are the same.
 */
export interface Line {
  readonly text: string;
  /** The row of the table that the line was read by; null for blank lines, comments and lines that no row reads. */
  readonly row: string | null;
  /** The open section as the line was read (its own, for a line that opens one). */
  readonly section: string | null;
  readonly keyword: Keyword | null;
  /** The depths that the line begins with. */
  readonly depths: Interval | Quantity | null;
  /** The clock or elapsed time that a test line begins with is an item, slot `elapsed`. */
  readonly items: readonly Item[];
  readonly remark: Text | null;
  readonly comment: Text | null;
  readonly allow: Allow | null;
  readonly problems: readonly Problem[];
}

export interface Tree {
  readonly lines: readonly Line[];
}
