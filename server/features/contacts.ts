import { type Span, spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { Depth, Interval, WellLog } from '../model/log.ts';
import { areSame, depthAt, depthsOn } from './depths.ts';
import { entryOf, leadingInterval } from './entries.ts';
import { lineAt, type Position } from './position.ts';

/** The top that a line takes from the base above it, where it begins with the dash. */
function continuedTop({ log }: Snapshot, line: Line, number: number): Depth | null {
  if (line.row === null || line.depths?.kind !== 'interval' || line.depths.from !== null) return null;
  const interval = leadingInterval(entryOf(log, line.row, number));
  return interval?.continued === true ? interval.top : null;
}

interface Leaning {
  readonly interval: Interval;
}

/** Where a depth is said first: as the base of a layer, else of the hole, else as the foot of a string. */
const columnsOf = (log: WellLog): readonly (readonly Leaning[])[] => [log.strata, log.hole, log.strings];

function baseAt(log: WellLog, metres: number): Span | null {
  for (const column of columnsOf(log)) {
    const based = column.find(({ interval: { bottom } }) => bottom?.value != null && areSame(bottom.value, metres));
    if (based?.interval.bottom) return based.interval.bottom.span;
  }
  return null;
}

/** The top that the cursor's line takes from above, where it stands on the dash or before it. */
function topUnderDash(snapshot: Snapshot, line: Line, at: Position): Depth | null {
  const { depths } = line;
  if (depths?.kind !== 'interval' || at.column > depths.dash.end) return null;
  return continuedTop(snapshot, line, at.line);
}

interface Contact {
  readonly metres: number;
  /** Where it is said; null where only things that lean on it name it. */
  readonly base: Span | null;
}

function contactAt(snapshot: Snapshot, position: Position): Contact | null {
  const found = lineAt(snapshot, position);
  if (found === null) return null;
  const { log } = snapshot;
  const top = topUnderDash(snapshot, found.line, found.at);
  if (top !== null && top.value !== null) return { metres: top.value, base: top.span };
  const under = depthAt(found.line, found.at.column, log.units);
  return under === null || under.isLevel ? null : { metres: under.metres, base: baseAt(log, under.metres) };
}

/** Where the depth under the cursor is said: the base of a layer, of the hole, or of a string. */
export const contactDefinition = (snapshot: Snapshot, position: Position): Span | null =>
  contactAt(snapshot, position)?.base ?? null;

function leaningOn(snapshot: Snapshot, metres: number, line: Line, number: number): readonly Span[] {
  const named = depthsOn(line, snapshot.log.units).filter((depth) => !depth.isLevel && areSame(depth.metres, metres));
  const top = continuedTop(snapshot, line, number)?.value ?? null;
  const continues = top !== null && areSame(top, metres) && line.depths?.kind === 'interval';
  const spans = continues && line.depths?.kind === 'interval' ? [line.depths.dash, ...named] : named;
  return spans.map((columns) => spanAt(number, columns));
}

const isSame = (a: Span, b: Span | null): boolean => b !== null && a.line === b.line && a.start === b.start;

/** Every place that names the depth under the cursor or begins at it, with or without the one that says it. */
export function contactReferences(snapshot: Snapshot, position: Position, withBase: boolean): readonly Span[] {
  const contact = contactAt(snapshot, position);
  if (contact === null) return [];
  return snapshot.tree.lines
    .flatMap((line, number) => leaningOn(snapshot, contact.metres, line, number))
    .filter((span) => withBase || !isSame(span, contact.base));
}
