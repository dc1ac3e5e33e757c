import * as l10n from '@vscode/l10n';
import { readLine } from '../../../grammar/sections.ts';
import type { Item, Line } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { type Word, wordsOf } from '../words.ts';
import { type Change, changeOf, type Piece, withPieces, withPiecesInColumns } from './change.ts';
import { linesOf, type Refactoring } from './refactoring.ts';

const saysTheSame = (line: Line, text: string): boolean =>
  meaningOf(readLine(text, { section: line.section, hasString: true }).line) === meaningOf(line);

/** A line with as many of the pieces as leave its meaning: all of them, else one after the other. */
function rewithPieces(line: Line, pieces: readonly Piece[]): string {
  const all = withPiecesInColumns(line.text, pieces);
  if (saysTheSame(line, all)) return all;
  const kept: Piece[] = [];
  for (const piece of pieces) if (saysTheSame(line, withPieces(line.text, [...kept, piece]))) kept.push(piece);
  return withPiecesInColumns(line.text, kept);
}

function longPiece({ value }: Item): readonly Piece[] {
  if (value.kind === 'term') return [{ start: value.start, end: value.end, text: value.term.name }];
  return value.kind === 'description' ? [{ start: value.start, end: value.end, text: value.long }] : [];
}

const longPieces = (line: Line): readonly Piece[] => line.items.flatMap(longPiece);

/** The forms of a word, the long one first: those of the adjective where it stands as one. */
function formsOf({ term: { name, short, ground } }: Word, written: string): readonly string[] {
  const adjectives = ground?.adjective === undefined ? [] : [ground.adjective, ...(ground.adjectiveShort ?? [])];
  return adjectives.includes(written.toLowerCase()) ? adjectives : [name, ...short];
}

/** The first of the short forms is the one that is written most; the others are variants. */
function shortOf(word: Word, written: string): string {
  const [long = written, ...short] = formsOf(word, written);
  return short.find(({ length }) => length < long.length) ?? long;
}

/** What is written as short already stays. */
const shortPieces = (line: Line): readonly Piece[] =>
  wordsOf(line).flatMap((word) => {
    const { start, end } = word;
    const text = shortOf(word, line.text.slice(start, end));
    return text.length < end - start ? [{ start, end, text }] : [];
  });

const ways = { expand: longPieces, shorten: shortPieces } as const;
type Way = keyof typeof ways;

const changedLine = (line: Line, way: Way): string | null => {
  const pieces = ways[way](line).filter(({ start, end, text }) => line.text.slice(start, end) !== text);
  const text = pieces.length === 0 ? line.text : rewithPieces(line, pieces);
  return text === line.text ? null : text;
};

function changesIn({ tree }: Snapshot, first: number, last: number, way: Way): readonly Change[] {
  return tree.lines.slice(first, last + 1).flatMap((line, at) => {
    const text = changedLine(line, way);
    return text === null ? [] : [changeOf(first + at, line.text, text)];
  });
}

/** More lines than this are not looked through to see whether there is something to do. */
const mostLooked = 200;

const titles: Readonly<Record<Way, { readonly lines: () => string; readonly file: () => string }>> = {
  expand: {
    lines: () => l10n.t('Write the terms of these lines in full'),
    file: () => l10n.t('Write every term of the file in full'),
  },
  shorten: {
    lines: () => l10n.t('Write the terms of these lines short'),
    file: () => l10n.t('Write every term of the file short'),
  },
};

const bothWays: readonly Way[] = ['expand', 'shorten'];

/** Terms written in full or in the short forms of the trade, in the lines selected or in the whole file; nothing changes meaning. */
export const rewriteTerms: Refactoring = {
  id: 'rewrite-terms',
  kind: 'refactor.rewrite',
  offers: (snapshot, selection, asked) => {
    if (!asked) return [];
    const { first, last } = linesOf(snapshot, selection);
    const looked = Math.min(last, first + mostLooked);
    return bothWays.flatMap((way) => [
      ...(changesIn(snapshot, first, looked, way).length > 0
        ? [{ name: `${way} lines`, title: titles[way].lines() }]
        : []),
      { name: `${way} file`, title: titles[way].file() },
    ]);
  },
  changes: (snapshot, selection, name) => {
    const way: Way = name.startsWith('expand') ? 'expand' : 'shorten';
    const { first, last } = linesOf(snapshot, selection);
    return name.endsWith('file')
      ? changesIn(snapshot, 0, snapshot.lines.length - 1, way)
      : changesIn(snapshot, first, last, way);
  },
  refusal: null,
};
