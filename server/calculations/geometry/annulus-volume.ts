import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { type AnnulusPiece, about as ofPieces } from './annulus-pieces.ts';

export const about: Formula = ofPieces;

/**
 * Volume of a run of annulus pieces, m³: their sum.
 *
 * Refused where a piece has no diameter or the string does not fit; the reason names the depths (m).
 * Source: geometry. Worked example: pieces of 0.2 m³ and 0.09 m³ make 0.29 m³.
 */
export function annulusVolume(pieces: readonly AnnulusPiece[]): Outcome {
  if (pieces.length === 0) return refused('the interval has no length');
  let sum = 0;
  for (const piece of pieces) {
    if (piece.volume === null) return refused(whyUnknown(piece));
    sum += piece.volume;
  }
  return known(sum);
}

function whyUnknown(piece: AnnulusPiece): string {
  const where = `from ${toMillimetre(piece.top)} m to ${toMillimetre(piece.bottom)} m`;
  if (piece.outer === null) return `the diameter of the wall outside is not known ${where}`;
  if (piece.inner === null) return `the outside diameter of the string is not known ${where}`;
  return `the string is as wide as the wall around it ${where}`;
}

function toMillimetre(depth: number): number {
  return Math.round(depth * 1000) / 1000;
}
