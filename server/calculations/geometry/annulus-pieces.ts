import type { Formula } from '../formula.ts';
import { annulusArea } from './annulus-area.ts';

export const about: Formula = {
  name: 'annulus, volume of an interval',
  text: 'V = ∑ π/4 (D² - d²) Δz over every change of diameter; D inside of the outer wall, d outside of the string, Δz length of the piece, m; V m³',
  source: 'geometry',
  range: 'D greater than d in every piece',
  caution: null,
};

/** A stretch of one diameter. Depths in m, positive downward; diameter in m, null where nobody wrote it down. */
export interface DiameterSpan {
  readonly top: number;
  readonly bottom: number;
  readonly diameter: number | null;
}

/** A stretch of annulus between two changes of diameter. */
export interface AnnulusPiece {
  /** Depths, m, positive downward. */
  readonly top: number;
  readonly bottom: number;
  /** Inside of the outer wall, m; null where it is not known. */
  readonly outer: number | null;
  /** Outside of the inner string, m; 0 where no string stands; null where it is not known. */
  readonly inner: number | null;
  /** m³; null where a diameter is not known or the string does not fit. */
  readonly volume: number | null;
}

/**
 * Cuts an interval at every change of diameter, outside or inside, and gives the volume of each piece.
 *
 * V = ∑ π/4 (D² − d²) Δz. Depths and diameters in m, volumes in m³. Where several outer walls are given for one depth
 * the narrowest counts (a string inside a hole); where several inner ones are given the widest counts. No outer wall at
 * a depth leaves the piece unknown; no inner string there leaves the hole open, d = 0.
 * Source: geometry.
 * Worked example: 10 in hole, 6.625 in casing, 65 ft: 19.89 ft³ = 148.8 US gal = 0.5632 m³.
 */
export function annulusPieces(
  top: number,
  bottom: number,
  outerWalls: readonly DiameterSpan[],
  innerStrings: readonly DiameterSpan[],
): AnnulusPiece[] {
  const within = (span: DiameterSpan): boolean => span.top < bottom && span.bottom > top;
  const [walls, strings] = [outerWalls.filter(within), innerStrings.filter(within)];
  const cuts = cutDepths(top, bottom, [...walls, ...strings]);
  const pieces: AnnulusPiece[] = [];
  for (const [index, from] of cuts.entries()) {
    const to = cuts[index + 1];
    if (to !== undefined) pieces.push(pieceBetween(from, to, walls, strings));
  }
  return mergeAlike(pieces);
}

function cutDepths(top: number, bottom: number, spans: readonly DiameterSpan[]): number[] {
  if (!(bottom > top)) return [];
  const inside = spans.flatMap((span) => [span.top, span.bottom]).filter((depth) => depth > top && depth < bottom);
  return [...new Set([top, ...inside, bottom])].sort((a, b) => a - b);
}

function pieceBetween(
  top: number,
  bottom: number,
  outerWalls: readonly DiameterSpan[],
  innerStrings: readonly DiameterSpan[],
): AnnulusPiece {
  const outer = pick(diametersOver(top, bottom, outerWalls), Math.min, null);
  const inner = pick(diametersOver(top, bottom, innerStrings), Math.max, 0);
  return { top, bottom, outer, inner, volume: pieceVolume(top, bottom, outer, inner) };
}

function diametersOver(top: number, bottom: number, spans: readonly DiameterSpan[]): (number | null)[] {
  return spans.filter((span) => span.top <= top && bottom <= span.bottom).map((span) => span.diameter);
}

/** One unknown diameter among several leaves the choice between them unknown. */
function pick(
  diameters: readonly (number | null)[],
  choose: (...values: number[]) => number,
  none: number | null,
): number | null {
  if (diameters.length === 0) return none;
  const written = diameters.filter((diameter) => diameter !== null);
  return written.length === diameters.length ? choose(...written) : null;
}

function pieceVolume(top: number, bottom: number, outer: number | null, inner: number | null): number | null {
  if (outer === null || inner === null) return null;
  const area = annulusArea(outer, inner);
  return area.ok ? area.value * (bottom - top) : null;
}

function mergeAlike(pieces: readonly AnnulusPiece[]): AnnulusPiece[] {
  const merged: AnnulusPiece[] = [];
  for (const piece of pieces) {
    const last = merged.at(-1);
    if (last && last.outer === piece.outer && last.inner === piece.inner) {
      merged[merged.length - 1] = joined(last, piece);
    } else merged.push(piece);
  }
  return merged;
}

function joined(upper: AnnulusPiece, lower: AnnulusPiece): AnnulusPiece {
  const { outer, inner } = upper;
  return {
    top: upper.top,
    bottom: lower.bottom,
    outer,
    inner,
    volume: pieceVolume(upper.top, lower.bottom, outer, inner),
  };
}
