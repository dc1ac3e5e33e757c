import type { Length } from './lengths.ts';
import type { DepthUnit, Part } from './notes.ts';

/** A line whose wording may wait for the file's unit. */
export interface DraftLine {
  readonly kind: 'line';
  readonly part: Part;
  readonly text: string | ((units: DepthUnit | null) => string);
}

/** A layer of ground; how its depths are told decides what they are. */
export interface DraftLayer {
  readonly kind: 'layer';
  /** `to`: its base alone; `thick`: its thickness; `single`: one of base, top, thickness; `top`: its top alone. */
  readonly how: 'interval' | 'to' | 'thick' | 'single' | 'top' | 'none';
  readonly from: Length | null;
  readonly to: Length | null;
  readonly words: string;
  readonly remark: string | null;
}

/** The total depth, which is a line of `hole` only where no other reaches it. */
export interface DraftTotal {
  readonly kind: 'total';
  readonly depth: Length;
}

export type DraftItem = DraftLine | DraftLayer | DraftTotal;

/** What a piece of the notes comes to, before the notes are seen as a whole. */
export interface Outcome {
  readonly items: readonly DraftItem[];
  readonly why: readonly string[];
  /** Lengths that stand for depths: their units tell what bare ones are. */
  readonly depths: readonly Length[];
  /** An open date, which raises a question. */
  readonly openDate: string | null;
}

export interface Draft extends Outcome {
  readonly first: number;
  readonly last: number;
  readonly source: readonly string[];
}

export const nothing: Outcome = { items: [], why: [], depths: [], openDate: null };

export const line = (part: Part, text: DraftLine['text']): DraftLine => ({ kind: 'line', part, text });

export const both = (a: Outcome, b: Outcome): Outcome => ({
  items: [...a.items, ...b.items],
  why: [...a.why, ...b.why],
  depths: [...a.depths, ...b.depths],
  openDate: a.openDate ?? b.openDate,
});
