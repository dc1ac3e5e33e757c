export type PieceKind = 'word' | 'comma' | 'and' | 'dash' | 'with' | 'symbol' | 'name' | 'doubt';

/**
 * A word or mark of a description. Brackets, strokes and colons between words are commas; words in quotes are a name, and
 * so is the number of a seam (`No. 6`, `#6`). A question mark is a doubt.
 */
export interface Piece {
  readonly kind: PieceKind;
  /** As written. A `symbol` may carry its brackets. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** True where no blank stands before it. */
  readonly glued: boolean;
}

const symbolPattern = '(?:G[WPMC]|S[WPMC]|[MCO][LH]|PT)(?:-(?:G[MC]|S[MC]|ML))?';

const symbolShape = new RegExp(`^${symbolPattern}$`);

const marks = new RegExp(
  `"[^"]+"|\\b[nN][oO](?:\\.\\s?|\\s)\\d{1,2}(?![\\d.])|#\\d+|\\?|[wW]/[oO]\\b|[wW]/(?![cC]\\b)|\\(${symbolPattern}\\)|\\b${symbolPattern}\\b(?![-–—]\\p{L})|[&+]|[-–—]+|[,;:()\\[\\]"/|]|[^\\s?,;:()\\[\\]"/|&+–—-]+`,
  'gu',
);

const numbered = /^(?:no\b.*|#)\d+$/i;

const kindOf = (text: string, hasSmallLetters: boolean): PieceKind => {
  if (text.startsWith('(') && text.length > 1) return 'symbol';
  if ((text.startsWith('"') && text.length > 1) || numbered.test(text)) return 'name';
  if (text === '?') return 'doubt';
  if (/^w\/$/i.test(text)) return 'with';
  if (text === '&' || text === '+') return 'and';
  if (/^[-–—]+$/.test(text)) return 'dash';
  if (/^[,;:()[\]"/|]$/.test(text)) return 'comma';
  return hasSmallLetters && symbolShape.test(text) ? 'symbol' : 'word';
};

/** Splits the text of a description, standing alone, into pieces; `offset` is added to every place. */
export const piecesOf = (text: string, offset = 0): readonly Piece[] => {
  const hasSmallLetters = /\p{Ll}/u.test(text);
  return [...text.matchAll(marks)].map((match) => {
    const start = match.index;
    const glued = start > 0 && !/\s/.test(text[start - 1] ?? ' ');
    const kind = kindOf(match[0], hasSmallLetters);
    return { kind, text: match[0], start: offset + start, end: offset + start + match[0].length, glued };
  });
};

const doubted = new Set<PieceKind | undefined>(['word', 'name', 'symbol']);

/** True for a question mark that is glued to a word, which it doubts; any other asks what nobody wrote down. */
export const doubtsWord = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.kind === 'doubt' && pieces[at].glued && doubted.has(pieces[at - 1]?.kind);
