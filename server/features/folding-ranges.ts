import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { sectionTotals } from './section-totals.ts';
import { sectionsOf } from './sections.ts';

export interface Fold {
  readonly first: number;
  readonly last: number;
  readonly kind: 'section' | 'comment';
}

const isComment = (line: Line): boolean => line.comment !== null && line.row === null && line.allow === null;

function commentFolds(lines: readonly Line[]): readonly Fold[] {
  const folds: Fold[] = [];
  let first: number | null = null;
  for (let number = 0; number <= lines.length; number += 1) {
    const line = lines[number];
    const comment = line !== undefined && isComment(line);
    if (comment && first === null) first = number;
    if (comment || first === null) continue;
    if (number - first > 1) folds.push({ first, last: number - 1, kind: 'comment' });
    first = null;
  }
  return folds;
}

/** What may be folded: sections, strings with what hangs on them, and runs of comment lines. */
export function foldingRanges({ tree }: Snapshot): readonly Fold[] {
  const sections = sectionsOf(tree).filter(({ first, last }) => last > first);
  const folds = sections.map(({ first, last }): Fold => ({ first, last, kind: 'section' }));
  return [...folds, ...commentFolds(tree.lines)].sort((a, b) => a.first - b.first);
}

/** What stands for the lines of a fold: what its section comes to; empty where nothing is known of it. */
export function foldSummary(snapshot: Snapshot, { first, last, kind }: Fold): string {
  const id = snapshot.tree.lines[first]?.section ?? null;
  return kind === 'comment' || id === null ? '' : sectionTotals(snapshot, { id, first, last });
}
