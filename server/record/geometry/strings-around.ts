import type { Period, PipeString } from '../../model/log.ts';
import type { Stretch } from '../intervals.ts';
import { type Layer, layered } from './layers.ts';
import { extentOf, footOf, type Standing, standingDuring } from './strings.ts';

/** A string that stands, or may stand, around another. */
export interface StringWall {
  readonly string: PipeString;
  /** Its inside diameter in metres; null where its wall was not written down. */
  readonly inside: number | null;
  readonly standing: Exclude<Standing, 'gone'>;
}

/**
 * The next strings out from one string along a stretch, while something is placed: at each depth the narrowest string
 * that is wider than it. Stretches without one are left out.
 */
export function stringsAround(
  string: PipeString,
  strings: readonly PipeString[],
  stretch: Stretch,
  work: Period | null,
): Layer<StringWall>[] {
  const around = strings.filter((other) => mayBeAround(other, string)).sort((a, b) => widthOf(a) - widthOf(b));
  const layers: Layer<StringWall>[] = [];
  for (const other of around) {
    const standing = standingDuring(other, work);
    const extent = extentOf(other);
    if (standing === 'gone' || !extent || extent.top >= stretch.bottom || extent.bottom <= stretch.top) continue;
    layers.push({ ...extent, of: { string: other, inside: other.size.insideDiameter, standing } });
    if (extent.top <= stretch.top && extent.bottom >= stretch.bottom) break;
  }
  return layered(layers);
}

/** Wider than the string; where a size is missing, one whose foot lies higher. */
function mayBeAround(other: PipeString, string: PipeString): boolean {
  if (other === string) return false;
  const [outer, inner] = [other.size.outsideDiameter, string.size.outsideDiameter];
  if (outer !== null && inner !== null) return outer > inner;
  return (footOf(other) ?? 0) < (footOf(string) ?? 0);
}

const widthOf = (string: PipeString): number => string.size.outsideDiameter ?? 0;
