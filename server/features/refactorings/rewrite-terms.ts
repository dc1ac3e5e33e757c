import * as l10n from '@vscode/l10n';
import { readInside } from '../../../grammar/sections.ts';
import type { Line } from '../../../grammar/tree.ts';
import { meaningOf } from '../../../grammar/write.ts';
import type { Snapshot } from '../../analysis/snapshot.ts';
import { type Word, wordsOf } from '../words.ts';
import { type Change, changeOf, type Piece, withPieces, withPiecesInColumns } from './change.ts';
import { linesOf, type Refactoring } from './refactoring.ts';

const saysTheSame = (line: Line, text: string): boolean =>
  meaningOf(readInside(line.section, text)) === meaningOf(line);

/** A line with as many of the pieces as leave its meaning: all of them, else one after the other. */
function rewithPieces(line: Line, pieces: readonly Piece[]): string {
  const all = withPiecesInColumns(line.text, pieces);
  if (saysTheSame(line, all)) return all;
  const kept: Piece[] = [];
  for (const piece of pieces) if (saysTheSame(line, withPieces(line.text, [...kept, piece]))) kept.push(piece);
  return withPiecesInColumns(line.text, kept);
}

/** The forms of a word, the long one first: those of the adjective where it stands as one. */
function formsOf({ term: { name, short, ground } }: Word, written: string): readonly string[] {
  const adjectives = ground?.adjective === undefined ? [] : [ground.adjective, ...(ground.adjectiveShort ?? [])];
  return adjectives.includes(written.toLowerCase()) ? adjectives : [name, ...short];
}

const lettersOf = (text: string): string => text.toLowerCase().replace(/[^a-z\d]/g, '');

/** No word of the trade is as short as its signs: `fe` for iron, `ct` for cable tool. */
const mostOfSign = 3;

/** True where the letters of a word stand in the long form in their order. */
function standsIn(word: string, long: string): boolean {
  let at = -1;
  return [...word].every((letter) => {
    at = long.indexOf(letter, at + 1);
    return at >= 0;
  });
}

/** True where every word is a sign or is shortened: `dthh`, not school for a supply, nor `fe stained` for stained. */
const isShortFor = (written: string, long: string): boolean =>
  lettersOf(written).length <= lettersOf(long).length &&
  written
    .split(/[\s-]+/)
    .map(lettersOf)
    .every((word) => word.length <= mostOfSign || standsIn(word, lettersOf(long)));

/** The word in full, where what is written is short for it; another word for the same thing says more and stays. */
function wordInFull(word: Word, line: Line): readonly Piece[] {
  const { start, end } = word;
  const written = line.text.slice(start, end);
  const [long = written] = formsOf(word, written);
  return isShortFor(written, long) ? [{ start, end, text: long }] : [];
}

function longPieces(line: Line): readonly Piece[] {
  const words = wordsOf(line);
  return line.items.flatMap(({ value }): readonly Piece[] => {
    const { start, end } = value;
    const here = words.filter((word) => start <= word.start && word.end <= end);
    const inFull = here.flatMap((word) => wordInFull(word, line));
    if (value.kind !== 'description' || inFull.length < here.length) return inFull;
    return [{ start, end, text: value.long }];
  });
}

/** The first of the short forms is the one that is written most; the others are variants. */
function shortOf(word: Word, written: string): string {
  const [long = written, ...short] = formsOf(word, written);
  return short.find(({ length }) => length < long.length) ?? long;
}

/** What is written as short already stays, and so does another word for the same thing. */
const shortPieces = (line: Line): readonly Piece[] =>
  wordsOf(line).flatMap((word) => {
    const { start, end } = word;
    const written = line.text.slice(start, end);
    const [long = written] = formsOf(word, written);
    const text = shortOf(word, written);
    return text.length < written.length && isShortFor(written, long) ? [{ start, end, text }] : [];
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
