import { type Span, spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { FileUnits } from '../model/log.ts';
import { areSame, depthAt, depthsOn } from './depths.ts';
import { lineAt, type Position, touches } from './position.ts';
import { type Word, wordsOf } from './words.ts';

/** How far from the cursor the words of descriptions are read again to look for a term, in lines. */
const termsWithin = 500;

type Finder = (line: Line, away: number) => readonly { readonly start: number; readonly end: number }[];

function sameDepth(line: Line, column: number, units: FileUnits): Finder | null {
  const under = depthAt(line, column, units);
  if (under === null) return null;
  return (each) => depthsOn(each, units).filter(({ metres }) => areSame(metres, under.metres));
}

function sameTerm(line: Line, column: number): Finder | null {
  const under = wordsOf(line).find((word) => touches(word, column));
  if (under === undefined) return null;
  const isSame = (word: Word) => word.list === under.list && word.term.id === under.term.id;
  return (each, away) => (away > termsWithin ? [] : wordsOf(each).filter(isSame));
}

function sameKeyword(line: Line, column: number): Finder | null {
  const { keyword } = line;
  if (keyword === null || !touches(keyword, column)) return null;
  return (each) => (each.keyword?.id === keyword.id ? [each.keyword] : []);
}

/** Where else the file says the same: the same depth, the same keyword, and near the cursor the same term. */
export function documentHighlights(snapshot: Snapshot, position: Position): readonly Span[] {
  const found = lineAt(snapshot, position);
  if (found === null) return [];
  const { line, at } = found;
  const finder =
    sameDepth(line, at.column, snapshot.log.units) ?? sameTerm(line, at.column) ?? sameKeyword(line, at.column);
  if (finder === null) return [];
  return snapshot.tree.lines.flatMap((each, number) =>
    finder(each, Math.abs(number - at.line)).map((columns) => spanAt(number, columns)),
  );
}
