import type { PipeString, WaterFound } from '../../model/log.ts';
import { type Layer, layered, uncovered } from '../geometry/layers.ts';
import { nameOf } from '../geometry/strings.ts';
import { bottomOf, type Stretch, stretchOf, topOf } from '../intervals.ts';
import { isLining, isPermanent } from '../strings/standing.ts';

/** Where found water stands: behind a string that shuts it off, open to the well, or not told for want of facts. */
export type WaterPlace =
  | { readonly where: 'behind'; readonly string: PipeString }
  | { readonly where: 'open' }
  | { readonly where: 'unknown'; readonly facts: readonly string[] };

/** Screens and perforations let in what comes down the annulus too, so a string that has any shuts nothing off. */
const isSolid = (string: PipeString): boolean =>
  string.kind !== 'screen' &&
  isPermanent(string) &&
  string.screens.length === 0 &&
  string.perforated.length === 0 &&
  !isLining(string);

/** The strings that shut off what stands behind them: solid pipe that stays in the well. */
export const solidStrings = (strings: readonly PipeString[]): PipeString[] => strings.filter(isSolid);

/** Depth of found water in metres: of an interval, its bottom; null where it is not known. */
export const depthOfFound = ({ depth, interval }: WaterFound): number | null => depth?.value ?? bottomOf(interval);

/** Tells of water where it stands. Water of an interval stands behind strings only where they cover all of it. */
export function waterPlaces(strings: readonly PipeString[]): (found: WaterFound) => WaterPlace {
  const solid = solidStrings(strings);
  const covered = layered(solid.flatMap(layerOf));
  return (found) => {
    const depth = depthOfFound(found);
    if (depth === null) return unknown(`the depth of the water found on line ${found.line + 1}`);
    const string = solid.find((each) => isBetween(depth, topOf(each.interval), bottomOf(each.interval)));
    if (string && coversAll(covered, found)) return { where: 'behind', string };
    const facts = solid.flatMap((each) => (mayReach(each, depth) ? missingEnds(each) : []));
    if (facts.length > 0) return unknown(...facts);
    return strings.length === 0 ? unknown('the strings that were set') : { where: 'open' };
  };
}

const unknown = (...facts: string[]): WaterPlace => ({ where: 'unknown', facts });

function layerOf(string: PipeString): Layer<PipeString>[] {
  const stretch = stretchOf(string.interval);
  return stretch ? [{ ...stretch, of: string }] : [];
}

const isBetween = (depth: number, top: number | null, bottom: number | null): boolean =>
  top !== null && bottom !== null && top < depth && depth < bottom;

function coversAll(covered: readonly Layer<PipeString>[], { interval }: WaterFound): boolean {
  const stretch: Stretch | null = stretchOf(interval);
  return stretch === null || uncovered(covered, stretch).length === 0;
}

/** True where a string, as far as its ends are known, may stand at a depth. */
function mayReach({ interval }: PipeString, depth: number): boolean {
  const [top, bottom] = [topOf(interval), bottomOf(interval)];
  return (top === null || top < depth) && (bottom === null || depth < bottom);
}

const missingEnds = (string: PipeString): string[] => [
  ...(topOf(string.interval) === null ? [`the top of ${nameOf(string)}`] : []),
  ...(bottomOf(string.interval) === null ? [`the bottom of ${nameOf(string)}`] : []),
];
