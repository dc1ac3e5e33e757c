import type { Columns } from '../../grammar/span.ts';
import type { Line } from '../../grammar/tree.ts';
import type { Snapshot } from '../analysis/snapshot.ts';
import { amountsOf } from './amounts.ts';
import { lineAt, type Position, touches } from './position.ts';
import { sectionAt } from './sections.ts';
import { wordsOf } from './words.ts';

/** A stretch that may span lines. */
export interface Stretch {
  readonly first: Position;
  readonly last: Position;
}

const onLine = (line: number, { start, end }: Columns): Stretch => ({
  first: { line, column: start },
  last: { line, column: end },
});

const wholeLines = (lines: readonly string[], first: number, last: number): Stretch => ({
  first: { line: first, column: 0 },
  last: { line: last, column: lines[last]?.length ?? 0 },
});

const lies = (inner: Position, outer: Position): number => inner.line - outer.line || inner.column - outer.column;

const holds = (outer: Stretch, inner: Stretch): boolean =>
  lies(inner.first, outer.first) >= 0 && lies(outer.last, inner.last) >= 0;

const isWider = (outer: Stretch, inner: Stretch): boolean => holds(outer, inner) && !holds(inner, outer);

/** The pieces of a description that commas part. */
const phrasesOf = ({ text }: Line, { start, end }: Columns): readonly Columns[] =>
  [...text.slice(start, end).matchAll(/[^,\s](?:[^,]*[^,\s])?/g)].map(({ index, 0: phrase }) => ({
    start: start + index,
    end: start + index + phrase.length,
  }));

/** What may be selected around the cursor, from the word to the whole file, each wider than the one before. */
export function selectionRanges(snapshot: Snapshot, position: Position): readonly Stretch[] {
  const found = lineAt(snapshot, position);
  if (found === null) return [];
  const { line, at } = found;
  const columns: Columns[] = [
    ...amountsOf(line).map(({ quantity }) => quantity),
    ...wordsOf(line),
    ...line.items.flatMap(({ value }) => (value.kind === 'description' ? phrasesOf(line, value) : [])),
    ...line.items.map(({ value }) => value),
    ...line.items,
    ...[line.keyword, line.depths, line.remark, line.comment].filter((each) => each !== null),
  ];
  const text = snapshot.lines[at.line] ?? '';
  const trimmed = { start: text.length - text.trimStart().length, end: text.trimEnd().length };
  const parts = columns.filter((each) => touches(each, at.column)).sort((a, b) => a.end - a.start - (b.end - b.start));
  const section = sectionAt(snapshot.tree, at.line);
  const all = [
    ...[...parts, trimmed, { start: 0, end: text.length }].map((each) => onLine(at.line, each)),
    ...(section === undefined ? [] : [wholeLines(snapshot.lines, section.first, section.last)]),
    wholeLines(snapshot.lines, 0, snapshot.lines.length - 1),
  ];
  const kept: Stretch[] = [];
  for (const each of all) if (isWider(each, kept.at(-1) ?? { first: at, last: at })) kept.push(each);
  return kept;
}
