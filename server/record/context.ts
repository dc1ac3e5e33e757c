import type { Fill, PipeString, WellLog } from '../model/log.ts';
import type { Limits } from '../packs/limits.ts';
import { type FillPlace, placeOfFill } from './geometry/fill-pieces.ts';
import { type HoleWall, holeWalls } from './geometry/hole-walls.ts';
import type { Layer } from './geometry/layers.ts';

/** A fill with its string and the annulus that it stands in. */
export interface PlacedFill {
  readonly fill: Fill;
  readonly string: PipeString;
  readonly place: FillPlace;
}

/** What every family of figures works from. */
export interface RecordContext {
  readonly log: WellLog;
  readonly limits: Limits;
  /** The hole from the top down, without overlap. */
  readonly hole: readonly Layer<HoleWall>[];
  /** The fills in annuli, string by string in the order of the file; plugs are not among them. */
  readonly fills: readonly PlacedFill[];
  readonly fillsOf: ReadonlyMap<PipeString, readonly PlacedFill[]>;
}

export function contextOf(log: WellLog, limits: Limits): RecordContext {
  const hole = holeWalls(log);
  const fillsOf = new Map(log.strings.map((string) => [string, placedAround(string, log, hole)]));
  return { log, limits, hole, fills: [...fillsOf.values()].flat(), fillsOf };
}

const placedAround = (string: PipeString, log: WellLog, hole: readonly Layer<HoleWall>[]): PlacedFill[] =>
  string.fills
    .filter((fill) => fill.kind !== 'plug')
    .map((fill) => ({ fill, string, place: placeOfFill(fill, string, log.strings, hole) }));
