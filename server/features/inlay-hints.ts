import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { penetrationRateHints, requiredVolumeHints } from './inlay-hints/figure-hints.ts';
import type { Hint, HintKind, HintSource } from './inlay-hints/hint.ts';
import { thicknessHints } from './inlay-hints/thickness.ts';
import { unitHints } from './inlay-hints/units.ts';
import { type Shows, showsAll } from './shows.ts';

const sources: Readonly<Record<HintKind, HintSource>> = {
  units: unitHints,
  thickness: thicknessHints,
  requiredVolume: requiredVolumeHints,
  penetrationRate: penetrationRateHints,
};

/** In the order in which they stand behind one column: what a value comes to stands next to it. */
const kinds: readonly HintKind[] = ['units', 'thickness', 'requiredVolume', 'penetrationRate'];

const byColumn = (a: Hint, b: Hint): number => a.column - b.column;

/** What may be shown within the lines from `first` to `last`, of the kinds that are wanted. */
export function inlayHints(
  snapshot: Snapshot,
  first: number,
  last: number,
  wanted: Shows['inlayHints'],
): readonly Hint[] {
  const shown = kinds.filter((kind) => wanted[kind]).map((kind) => sources[kind]);
  const from = Math.max(0, first);
  const ofLine = (line: Line, at: number): readonly Hint[] =>
    shown.flatMap((source) => source(snapshot, line, from + at)).sort(byColumn);
  return snapshot.tree.lines.slice(from, Math.max(from, last + 1)).flatMap(ofLine);
}

/** What is told of a hint to who points at it; null where the text has no such hint any more. */
export function aboutHint(snapshot: Snapshot, line: number, column: number, text: string): string | null {
  const hints = inlayHints(snapshot, line, line, showsAll.inlayHints);
  return hints.find((hint) => hint.column === column && hint.text === text)?.about() ?? null;
}
