import type { Snapshot } from '../../analysis/snapshot.ts';
import type { Selection } from '../code-actions.ts';
import type { Change } from './change.ts';

/** A change that a person may want of a text that is in order as it stands. */
export interface Offer {
  /** What it is known by among those of its refactoring. */
  readonly name: string;
  readonly title: string;
}

export interface Refactoring {
  readonly id: string;
  readonly kind: 'refactor.rewrite' | 'refactor.move' | 'refactor.extract';
  /**
   * What it has to offer there: all of it to one who asks, else only what the place itself suggests. Quick, whatever the
   * length of the log.
   */
  readonly offers: (snapshot: Snapshot, selection: Selection, asked: boolean) => readonly Offer[];
  /** The change of one of its offers; none where there turns out to be nothing to do. */
  readonly changes: (snapshot: Snapshot, selection: Selection, name: string) => readonly Change[];
  /** Why an offer comes to nothing, for the user; asked where there is no change. Null where it can only be that all is so already. */
  readonly refusal: ((snapshot: Snapshot, selection: Selection, name: string) => string | null) | null;
}

/** The lines that a selection touches. */
export const linesOf = ({ lines }: Snapshot, { first, last }: Selection): { first: number; last: number } => ({
  first: Math.max(0, Math.min(first.line, lines.length - 1)),
  last: Math.max(0, Math.min(last.line, lines.length - 1)),
});
