import * as l10n from '@vscode/l10n';
import { remembered } from '../../grammar/remembered.ts';
import type { Interval, WellLog } from '../model/log.ts';

export type ColumnName = 'hole' | 'strata' | 'drilling';

/** In French each is masculine and begins with a consonant, as the kinds of `kindText` do. */
const columnWords: Readonly<Record<ColumnName, () => string>> = {
  hole: () => l10n.t('hole'),
  strata: () => l10n.t('strata'),
  drilling: () => l10n.t('drilling'),
};

/** What a column tells of, in a sentence. */
export const columnText = (column: ColumnName): string => columnWords[column]();

/** An entry of a column of intervals. */
export interface Entry {
  readonly line: number;
  readonly interval: Interval;
}

export interface Pair<E extends Entry = Entry> {
  readonly column: ColumnName;
  readonly upper: E;
  readonly lower: E;
}

/** What is wrong between the lines of a column. Depths are metres. */
export interface ColumnFaults {
  readonly overlaps: Pair[];
  /** `upper` is null where the column does not begin at the surface. */
  readonly gaps: { readonly column: ColumnName; readonly upper: Entry | null; readonly lower: Entry }[];
  readonly reversed: { readonly column: ColumnName; readonly entry: Entry }[];
  readonly notDeepening: Pair[];
}

/** Depths closer than this are one depth: half a centimetre is rounding between units. */
export const sameDepth = 0.005;

export const topOf = ({ interval }: Entry): number | null => interval.top?.value ?? null;
export const bottomOf = ({ interval }: Entry): number | null => interval.bottom?.value ?? null;

/** Where a column may begin below ground: the foot of the old hole, in a well that was deepened. */
const oldFoot = (log: WellLog): number => Math.max(0, ...log.existing.map((each) => bottomOf(each) ?? 0));

interface Walk {
  readonly column: ColumnName;
  readonly faults: ColumnFaults;
  readonly begin: number | null;
  /** The entry that reaches deepest so far; null before the first. */
  deepest: Entry | null;
}

function compare(walk: Walk, upper: Entry, lower: Entry): void {
  const { column, faults } = walk;
  const above = { top: topOf(upper), bottom: bottomOf(upper) };
  const here = { top: topOf(lower), bottom: bottomOf(lower) };
  if (above.top !== null && here.bottom !== null && here.bottom <= above.top + sameDepth)
    faults.notDeepening.push({ column, upper, lower });
  else if (above.bottom === null || here.top === null) return;
  else if (here.top < above.bottom - sameDepth) faults.overlaps.push({ column, upper, lower });
  else if (here.top > above.bottom + sameDepth && walk.begin !== null) faults.gaps.push({ column, upper, lower });
}

function visit(walk: Walk, entry: Entry): void {
  const top = topOf(entry);
  const bottom = bottomOf(entry);
  if (top !== null && bottom !== null && bottom <= top) {
    walk.faults.reversed.push({ column: walk.column, entry });
    return;
  }
  if (walk.deepest) compare(walk, walk.deepest, entry);
  else if (walk.begin !== null && top !== null && top > walk.begin + sameDepth)
    walk.faults.gaps.push({ column: walk.column, upper: null, lower: entry });
  const reached = walk.deepest ? bottomOf(walk.deepest) : null;
  if (reached === null || bottom === null || bottom >= reached) walk.deepest = entry;
}

function faultsOf(log: WellLog): ColumnFaults {
  const faults: ColumnFaults = { overlaps: [], gaps: [], reversed: [], notDeepening: [] };
  const walkDown = (column: ColumnName, entries: readonly Entry[], begin: number | null) => {
    const walk: Walk = { column, faults, begin, deepest: null };
    for (const entry of entries) visit(walk, entry);
  };
  walkDown('hole', log.hole, oldFoot(log));
  walkDown('strata', log.strata, oldFoot(log));
  walkDown(
    'drilling',
    log.drilling.flatMap((each) => each.intervals),
    null,
  );
  return faults;
}

/** The faults of all columns, found in one walk and kept for the rules that share them. */
export const columnFaults = remembered(faultsOf);
