import { annulusArea } from '../../calculations/geometry/annulus-area.ts';
import type { Fill, PipeString } from '../../model/log.ts';
import type { FillPlace } from '../geometry/fill-pieces.ts';
import { type HoleWall, wideHoleBelow } from '../geometry/hole-walls.ts';
import { type Layer, uncovered, within } from '../geometry/layers.ts';
import { footOf, nameOf, sizeInDoubt, stringInDoubt } from '../geometry/strings.ts';
import { bottomOf, inDoubt, intervalInDoubt, type Stretch } from '../intervals.ts';

/** A volume in m3 with what it waits for; `value` null where a fact is missing, 0 where there is none of it. */
export interface Part {
  readonly value: number | null;
  readonly waitsFor: readonly string[];
  readonly doubtful: boolean;
}

const none: Part = { value: 0, waitsFor: [], doubtful: false };

const pumped = new Set(['cement', 'bentonite-slurry', 'concrete']);

/** Volume of the plug left inside the string, m3. */
export function plugInside(fill: Fill, string: PipeString): Part {
  if (!fill.plugInside) return none;
  const height = fill.plugInside.value;
  const doubtful = inDoubt(fill.plugInside) || sizeInDoubt(string.size);
  const inside = string.size.insideDiameter;
  const waitsFor: string[] = [];
  if (height === null) waitsFor.push('the height of the plug left inside');
  if (inside === null) waitsFor.push(`the wall or the inside diameter of ${nameOf(string)}`);
  if (height === null || inside === null) return { value: null, waitsFor, doubtful };
  const area = annulusArea(inside, 0);
  return area.ok
    ? { value: area.value * Math.abs(height), waitsFor, doubtful }
    : { value: null, waitsFor: [area.why], doubtful };
}

/**
 * Volume of the hole below the foot that a pumped fill filled, m3: down to the bottom that the log gives it, or, where
 * it reaches the foot, down to where the hole gets narrower than the string.
 */
export function holeBelowFoot(
  fill: Fill,
  string: PipeString,
  place: FillPlace,
  hole: readonly Layer<HoleWall>[],
): Part & { readonly stretch: Stretch | null } {
  const stretch = place.belowFoot ?? impliedBelow(fill, string, hole);
  if (!stretch) return { ...none, stretch };
  const part = openHole(within(hole, stretch), stretch);
  return { ...part, doubtful: part.doubtful || stringInDoubt(string) || intervalInDoubt(fill.interval), stretch };
}

const nearlyAtFoot = 0.05;

function impliedBelow(fill: Fill, string: PipeString, hole: readonly Layer<HoleWall>[]): Stretch | null {
  const [foot, bottom] = [footOf(string), bottomOf(fill.interval)];
  const outside = string.size.outsideDiameter;
  if (foot === null || bottom === null || outside === null || string.driven) return null;
  if (!pumped.has(fill.fillClass ?? '') || Math.abs(bottom - foot) > nearlyAtFoot) return null;
  return wideHoleBelow(hole, foot, outside);
}

function openHole(walls: readonly Layer<HoleWall>[], stretch: Stretch): Part {
  const bare = uncovered(walls, stretch).length > 0 || walls.some((wall) => wall.of.diameter === null);
  const doubtful = walls.some((wall) => wall.of.doubtful);
  if (bare) return { value: null, waitsFor: ['the diameter of the hole below the foot'], doubtful };
  let volume = 0;
  for (const { top, bottom, of } of walls) {
    const area = annulusArea(of.diameter ?? 0, 0);
    if (!area.ok) return { value: null, waitsFor: [area.why], doubtful };
    volume += area.value * (bottom - top);
  }
  return { value: volume, waitsFor: [], doubtful };
}

/** What came back at surface, m3. */
export function returned(fill: Fill): Part {
  if (!fill.returned) return none;
  const value = fill.returned.value;
  const waitsFor = value === null ? ['the volume that came back at surface'] : [];
  return { value, waitsFor, doubtful: inDoubt(fill.returned) };
}

/** What was added after the fill settled, m3. */
export function toppedUp(fill: Fill): Part {
  if (!fill.topUp) return none;
  const value = fill.topUp.value;
  const waitsFor = value === null ? ['the volume added as a top-up'] : [];
  return { value, waitsFor, doubtful: inDoubt(fill.topUp) };
}
