import type { Line } from '../../../grammar/tree.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import type { Shows } from '../shows.ts';

export type HintKind = keyof Shows['inlayHints'];

/** A piece that the editor shows behind a column of a line, as if it stood there. */
export interface Hint {
  readonly line: number;
  readonly column: number;
  readonly text: string;
  /** Plain text for who points at it; worked out then. */
  readonly about: () => string;
}

/** One kind of hints: those of a line. */
export type HintSource = (snapshot: Snapshot, line: Line, number: number) => readonly Hint[];
