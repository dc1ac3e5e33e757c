import { type Span, spanAt } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import type { FileUnits } from '../model/log.ts';
import { amountsOf, siOf } from './amounts.ts';
import { lineAt, type Position, touches } from './position.ts';
import { type Word, wordsOf } from './words.ts';

/** Two depths are one contact where they differ by less than this, in metres. */
const sameContact = 0.0005;

/** How far from the cursor the words of descriptions are read again to look for a term, in lines. */
const termsWithin = 500;

type Finder = (line: Line, away: number) => readonly { readonly start: number; readonly end: number }[];

function sameDepth(line: Line, column: number, units: FileUnits): Finder | null {
  const under = amountsOf(line).find(({ role, quantity }) => role === 'depth' && touches(quantity, column));
  const depth = under === undefined ? null : siOf(under, units);
  if (depth === null) return null;
  return (each) =>
    amountsOf(each)
      .filter(
        (amount) => amount.role === 'depth' && Math.abs((siOf(amount, units) ?? Number.NaN) - depth) < sameContact,
      )
      .map(({ quantity }) => quantity);
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
