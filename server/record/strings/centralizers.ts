import { centralizerGaps } from '../../calculations/casing/centralizer-gaps.ts';
import type { Depth, PipeString } from '../../model/log.ts';
import { topOf } from '../intervals.ts';

/** The foot that gaps are counted from: the shoe, else the bottom of the string. */
export const footForGaps = (string: PipeString): Depth | null =>
  string.shoe?.depth?.value != null ? string.shoe.depth : string.interval.bottom;

/** Gaps end at the ground, or at the top of a string that ends below it. */
export const surfaceFor = (top: number): number => Math.max(0, top);

const mostPositions = 10_000;

/** Depths of the centralizers in metres, those of `every` counted up from the foot; null where a depth is missing. */
export function positionsOf(string: PipeString): number[] | null {
  const { centralizers } = string;
  const foot = footForGaps(string)?.value ?? null;
  const top = topOf(string.interval);
  if (!centralizers || foot === null || top === null) return null;
  const written = centralizers.positions.map((depth) => depth.value);
  const known = written.filter((depth) => depth !== null);
  if (known.length < written.length) return null;
  if (!centralizers.every) return known.length > 0 ? known : null;
  const spaced = spacedFrom(foot, surfaceFor(top), centralizers.every.value ?? 0);
  return spaced && [...known, ...spaced];
}

/** Depths at a spacing from the foot up; null for no spacing, and for more of them than any string has. */
function spacedFrom(foot: number, top: number, spacing: number): number[] | null {
  const count = Math.max(0, Math.floor((foot - top) / spacing + 1e-9));
  if (!(spacing > 0) || count > mostPositions) return null;
  return Array.from({ length: count }, (_, index) => foot - (index + 1) * spacing);
}

/** Gaps along a string from its foot up to the ground, metres; null where a depth is missing. */
export function gapsOf(string: PipeString): { top: number; bottom: number }[] | null {
  const positions = positionsOf(string);
  const foot = footForGaps(string)?.value ?? null;
  const top = topOf(string.interval);
  if (positions === null || foot === null || top === null) return null;
  return centralizerGaps(positions, foot, surfaceFor(top)).map((gap) => ({ top: gap.top, bottom: gap.bottom }));
}
