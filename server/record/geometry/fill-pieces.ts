import { annulusVolume } from '../../calculations/geometry/annulus-volume.ts';
import type { Fill, PipeString } from '../../model/log.ts';
import { type Stretch, stretchOf } from '../intervals.ts';
import type { AnnulusPiece } from '../record.ts';
import type { HoleWall } from './hole-walls.ts';
import { countWithin, type Layer, layered, uncovered, within } from './layers.ts';
import { extentOf, mostStrings, nameOf, type Outside, outsidesOf, stringInDoubt, tooManyStrings } from './strings.ts';
import { type StringWall, stringsAround } from './strings-around.ts';

/**
 * A stretch of a fill that cannot be reckoned. `fact` is what the record waits for, null where nothing is missing;
 * `local` where it is missing only along this stretch.
 */
export interface UnknownStretch extends Stretch {
  readonly why: string;
  readonly fact: string | null;
  readonly local: boolean;
}

/** The annulus that a fill stands in. */
export interface FillPlace {
  readonly pieces: readonly AnnulusPiece[];
  readonly unknown: readonly UnknownStretch[];
  /** Lines of the hole and the strings that bound it. */
  readonly lines: readonly number[];
  readonly doubtful: boolean;
  /** Part of the fill below the foot of its string, in open hole; not in `pieces`. */
  readonly belowFoot: Stretch | null;
}

type Outer = { readonly hole: HoleWall } | { readonly around: StringWall };

/** More changes of diameter than any hole has along one fill. */
const mostChanges = 200;
const tooManyChanges = `no more than ${mostChanges} changes of diameter along one fill`;

const nowhere: FillPlace = { pieces: [], unknown: [], lines: [], doubtful: false, belowFoot: null };

/** Poured or left in place: they fill the hole below the foot as well, which belongs to their volume. */
const poured = new Set(['granular', 'bentonite-dry', 'native']);

const fillsBelowFoot = (fill: Fill): boolean => fill.kind === 'pack' || poured.has(fill.fillClass ?? '');

/** The annulus of a fill between every change of diameter, outside or inside. */
export function placeOfFill(
  fill: Fill,
  string: PipeString,
  strings: readonly PipeString[],
  hole: readonly Layer<HoleWall>[],
): FillPlace {
  const stretch = stretchOf(fill.interval);
  if (!stretch) return nowhere;
  if (string.driven) return unreckoned(stretch, `${nameOf(string)} is driven: it has no annulus`, null);
  if (strings.length > mostStrings) return unreckoned(stretch, tooManyStrings, tooManyStrings);
  if (countWithin(hole, stretch) + countWithin(outsidesOf(string), stretch) > mostChanges)
    return unreckoned(stretch, tooManyChanges, tooManyChanges);
  const extent = extentOf(string);
  const depths = `the depths of ${nameOf(string)}`;
  if (!extent) return unreckoned(stretch, `${depths} are not written down`, depths);
  const outers = outersOf(fill, string, strings, hole, stretch);
  const inners = innersOf(fill, string, stretch, extent.bottom);
  return { ...reckon(outers, inners, stretch, extent, string), belowFoot: belowFootOf(fill, stretch, extent) };
}

const unreckoned = (stretch: Stretch, why: string, fact: string | null): FillPlace => ({
  ...nowhere,
  unknown: [{ ...stretch, why, fact, local: false }],
});

function belowFootOf(fill: Fill, stretch: Stretch, extent: Stretch): Stretch | null {
  if (fillsBelowFoot(fill) || stretch.bottom <= extent.bottom) return null;
  return { top: Math.max(stretch.top, extent.bottom), bottom: stretch.bottom };
}

function outersOf(
  fill: Fill,
  string: PipeString,
  strings: readonly PipeString[],
  hole: readonly Layer<HoleWall>[],
  stretch: Stretch,
): Layer<Outer>[] {
  const around = stringsAround(string, strings, stretch, fill.placed);
  return layered<Outer>([
    ...around.map((layer) => ({ ...layer, of: { around: layer.of } })),
    ...within(hole, stretch).map((layer) => ({ ...layer, of: { hole: layer.of } })),
  ]);
}

/** The string along a fill; below its foot nothing, where the fill takes in the open hole. */
function innersOf(fill: Fill, string: PipeString, stretch: Stretch, foot: number): Layer<Outside>[] {
  const pipe = within(outsidesOf(string), stretch);
  if (!fillsBelowFoot(fill) || stretch.bottom <= foot) return pipe;
  return [...pipe, { top: Math.max(stretch.top, foot), bottom: stretch.bottom, of: { outside: 0 } }];
}

function reckon(
  outers: readonly Layer<Outer>[],
  inners: readonly Layer<Outside>[],
  stretch: Stretch,
  extent: Stretch,
  string: PipeString,
): Omit<FillPlace, 'belowFoot'> {
  const pieces: AnnulusPiece[] = [];
  const unknown: UnknownStretch[] = uncovered(inners, stretch)
    .filter((gap) => gap.top < extent.bottom)
    .map((gap) => withoutPipe(gap, extent, string));
  const lines = new Set<number>([string.line]);
  let doubtful = stringInDoubt(string);
  for (const inner of inners) {
    for (const gap of uncovered(outers, inner)) unknown.push(...withoutWall(gap));
    for (const outer of within(outers, inner)) {
      const piece = pieceOf(outer, inner.of, string);
      if ('fact' in piece) unknown.push(piece);
      else pieces.push(piece);
      lines.add('hole' in outer.of ? outer.of.hole.line : outer.of.around.string.line);
      doubtful ||= 'hole' in outer.of ? outer.of.hole.doubtful : stringInDoubt(outer.of.around.string);
    }
  }
  return { pieces, unknown: unknown.sort((a, b) => a.top - b.top), lines: [...lines], doubtful };
}

function withoutPipe(gap: Stretch, extent: Stretch, string: PipeString): UnknownStretch {
  if (gap.bottom <= 0) return { ...gap, why: `above ground and above ${nameOf(string)}`, fact: null, local: true };
  const above = gap.bottom <= extent.top;
  const why = above ? `above the top of ${nameOf(string)}` : `no pipe of ${nameOf(string)} is logged there`;
  return {
    ...gap,
    why,
    fact: above ? `what stands above ${nameOf(string)}` : `the pipe of ${nameOf(string)}`,
    local: true,
  };
}

/** Where no string and no hole bounds the fill: above ground nothing is missing, below it the hole is. */
function withoutWall(gap: Stretch): UnknownStretch[] {
  const above = { top: gap.top, bottom: Math.min(0, gap.bottom) };
  const below = { top: Math.max(0, gap.top), bottom: gap.bottom };
  const stretches: UnknownStretch[] = [];
  if (above.bottom > above.top)
    stretches.push({ ...above, why: 'above ground: no hole bounds it', fact: null, local: true });
  if (below.bottom > below.top) {
    stretches.push({ ...below, why: 'outside the hole that is logged', fact: 'the hole', local: true });
  }
  return stretches;
}

function pieceOf(outer: Layer<Outer>, inner: Outside, string: PipeString): AnnulusPiece | UnknownStretch {
  const { top, bottom } = outer;
  const missing = missingFact(outer, inner, string);
  if (missing) return { top, bottom, ...missing };
  const wide = 'hole' in outer.of ? outer.of.hole.diameter : outer.of.around.inside;
  const volume = annulusVolume(wide ?? 0, inner.outside ?? 0, bottom - top);
  if (!volume.ok || wide === null || inner.outside === null) return { top, bottom, ...doesNotFit(outer.of, string) };
  const bounds = 'hole' in outer.of ? 'hole' : String(outer.of.around.string.number);
  return { top, bottom, outer: wide, inner: inner.outside, volume: volume.value, bounds };
}

type Missing = Omit<UnknownStretch, keyof Stretch>;

function missingFact({ of }: Layer<Outer>, inner: Outside, string: PipeString): Missing | null {
  if (inner.outside === null) {
    const what = `the outside diameter of ${nameOf(string)}`;
    return { why: `${what} is not written down`, fact: what, local: false };
  }
  if ('hole' in of) return of.hole.diameter === null ? missingHole : null;
  const around = nameOf(of.around.string);
  if (of.around.standing === 'unclear') {
    const fact = `whether temporary ${around} still stood when this was placed`;
    return { why: `the log does not say ${fact}`, fact: `${fact} (dates and times of both)`, local: false };
  }
  if (of.around.inside === null) {
    const fact = `the wall or the inside diameter of ${around}`;
    return { why: `the wall of ${around} is not written down`, fact, local: false };
  }
  return null;
}

const missingHole: Missing = {
  why: 'the diameter of the hole is not written down',
  fact: 'the diameter of the hole',
  local: true,
};

function doesNotFit(outer: Outer, string: PipeString): Missing {
  const wall = 'hole' in outer ? 'the hole' : nameOf(outer.around.string);
  return {
    why: `${nameOf(string)} is as wide as ${wall} or wider`,
    fact: `diameters that fit: ${nameOf(string)} is as wide as ${wall} or wider`,
    local: true,
  };
}
