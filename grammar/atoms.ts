import type { Columns } from './span.ts';
import type {
  Grading,
  HashNumber,
  Interval,
  Moment,
  Period,
  Problem,
  Product,
  Quantity,
  Text,
  Unknown,
} from './tree.ts';

/** A word, as written. */
export interface Word extends Columns {
  readonly kind: 'word';
  readonly text: string;
}

/** A mark between items. */
export interface Mark extends Columns {
  readonly kind: 'mark';
  readonly mark: 'comma' | 'and' | 'dash' | 'with' | 'at' | 'bracket' | 'other';
  readonly text: string;
}

/** A class symbol in brackets. */
export interface BracketedSymbol extends Columns {
  readonly kind: 'symbol';
  readonly text: string;
}

/** Something that looks like a value and is none. */
export interface Bad extends Columns {
  readonly kind: 'bad';
  readonly problem: Problem;
}

/** What a line is made of before the table says what it means. */
export type Atom =
  | Quantity
  | Interval
  | Product
  | Moment
  | Period
  | Grading
  | HashNumber
  | Unknown
  | Text
  | Word
  | Mark
  | BracketedSymbol
  | Bad;

export const problem = (
  code: Problem['code'],
  { start, end }: Columns,
  written: string,
  meant: readonly string[] = [],
  facts: Problem['facts'] = {},
): Problem => ({ code, start, end, written, meant, facts });
