import { type Columns, type Span, spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { FileUnits } from '../model/log.ts';
import { areSame, depthAt, depthsOn } from './depths.ts';
import { lineAt, type Position, touches } from './position.ts';
import { type Word, wordsOf } from './words.ts';

/** How far from the cursor the words of descriptions are read again to look for a term, in lines. */
const termsWithin = 500;

type Finder = (line: Line, away: number) => readonly Columns[];

const none: readonly Columns[] = [];

/** Those that are looked for; most lines of a long log have none. */
const kept = <T extends Columns>(all: readonly T[], is: (each: T) => boolean): readonly Columns[] =>
  all.some(is) ? all.filter(is) : none;

function sameDepth(line: Line, column: number, units: FileUnits): Finder | null {
  const under = depthAt(line, column, units);
  if (under === null) return null;
  return (each) => kept(depthsOn(each, units), ({ metres }) => areSame(metres, under.metres));
}

function sameTerm(line: Line, column: number): Finder | null {
  const under = wordsOf(line).find((word) => touches(word, column));
  if (under === undefined) return null;
  const isSame = (word: Word) => word.list === under.list && word.term.id === under.term.id;
  return (each, away) => (away > termsWithin ? none : kept(wordsOf(each), isSame));
}

function sameKeyword(line: Line, column: number): Finder | null {
  const { keyword } = line;
  if (keyword === null || !touches(keyword, column)) return null;
  return (each) => (each.keyword?.id === keyword.id ? [each.keyword] : none);
}

/** Where else the file says the same: the same depth, the same keyword, and near the cursor the same term. */
export function documentHighlights(snapshot: Snapshot, position: Position): readonly Span[] {
  const found = lineAt(snapshot, position);
  if (found === null) return [];
  const { line, at } = found;
  const finder =
    sameDepth(line, at.column, snapshot.log.units) ?? sameTerm(line, at.column) ?? sameKeyword(line, at.column);
  if (finder === null) return [];
  const spans: Span[] = [];
  for (const [number, each] of snapshot.tree.lines.entries())
    for (const columns of finder(each, Math.abs(number - at.line))) spans.push(spanAt(number, columns));
  return spans;
}
