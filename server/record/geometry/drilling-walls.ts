import type { PipeString, WellLog } from '../../model/log.ts';
import { bottomOf, type Stretch } from '../intervals.ts';
import { type HoleWall, wideHoleBelow } from './hole-walls.ts';
import { firstStarting, type Layer, layered, uncovered } from './layers.ts';
import { extentOf, footOf, stringInDoubt } from './strings.ts';

/** What the flush comes up through along a stretch: the hole, or the inside of a string. `diameter` in metres. */
export interface Bore {
  readonly diameter: number | null;
  readonly line: number;
  readonly string: PipeString | null;
  readonly doubtful: boolean;
}

/** The widest bore above the bit, or the stretch whose diameter is missing. */
export type WidestBore =
  | { readonly known: true; readonly bore: Layer<Bore> }
  | { readonly known: false; readonly missing: Stretch; readonly string: PipeString | null };

/** The bore above each depth while some strings stand, with the widest so far. */
interface Profile {
  readonly bores: readonly Layer<Bore>[];
  /** For each bore, the index of the widest from the top down to it. */
  readonly widest: readonly number[];
  /** Where the first diameter is missing; below everything where none is. */
  readonly missing: Stretch & { readonly string: PipeString | null };
}

const seated = 0.005;

/** Tells, for any depth of the bit, the widest place that the flush passes on its way up; its cost grows with the square of the strings. */
export function boreAbove(
  log: WellLog,
  hole: readonly Layer<HoleWall>[],
): (bit: Stretch, own: Bore | null) => WidestBore {
  const strings = log.strings
    .filter((string) => footOf(string) !== null)
    .sort((a, b) => (footOf(a) ?? 0) - (footOf(b) ?? 0));
  const feet = strings.map((string) => footOf(string) ?? 0);
  const profiles = new Map<number, Profile>();
  return (bit, own) => {
    const count = feet.filter((foot) => foot <= bit.top + seated).length;
    let profile = profiles.get(count);
    if (!profile) {
      profile = profileOf(strings.slice(0, count), hole);
      profiles.set(count, profile);
    }
    return widestTo(profile, bit, own);
  };
}

function profileOf(standing: readonly PipeString[], hole: readonly Layer<HoleWall>[]): Profile {
  const insides = standing
    .flatMap((string): Layer<Bore>[] => {
      const extent = extentOf(string);
      const bore = { diameter: string.size.insideDiameter, line: string.line, string, doubtful: stringInDoubt(string) };
      return extent ? [{ ...extent, of: bore }] : [];
    })
    .sort((a, b) => (a.of.diameter ?? 0) - (b.of.diameter ?? 0));
  const through = standing.flatMap((string) => drilledThroughGrout(string, hole));
  const walls = hole.map(({ top, bottom, of }): Layer<Bore> => ({ top, bottom, of: boreOf(of) }));
  const bores = layered([...insides, ...through, ...walls]);
  return { bores, widest: widestSoFar(bores), missing: firstMissing(bores) };
}

/** Grout around the foot fills the wide hole below it, and the next bit drills its own size through. */
function drilledThroughGrout(string: PipeString, hole: readonly Layer<HoleWall>[]): Layer<Bore>[] {
  const [foot, outside] = [footOf(string), string.size.outsideDiameter];
  const grouted = string.fills.some(
    (fill) => fill.kind === 'grout' && (bottomOf(fill.interval) ?? -1) >= (foot ?? 0) - seated,
  );
  const wide = grouted && foot !== null && outside !== null ? wideHoleBelow(hole, foot, outside) : null;
  const next = wide ? hole.find((wall) => wall.top >= wide.bottom) : undefined;
  return wide && next ? [{ ...wide, of: boreOf(next.of) }] : [];
}

const boreOf = ({ diameter, line, doubtful }: HoleWall): Bore => ({ diameter, line, string: null, doubtful });

function widestSoFar(bores: readonly Layer<Bore>[]): number[] {
  let best = 0;
  return bores.map((bore, index) => {
    if ((bore.of.diameter ?? 0) > (bores[best]?.of.diameter ?? 0)) best = index;
    return best;
  });
}

const deepest = 1e9;

function firstMissing(bores: readonly Layer<Bore>[]): Profile['missing'] {
  const gap = uncovered(bores, { top: 0, bottom: deepest })[0] ?? { top: deepest, bottom: deepest };
  const blank = bores.find((bore) => bore.of.diameter === null && bore.bottom > 0);
  if (blank && blank.top < gap.top) return { top: blank.top, bottom: blank.bottom, string: blank.of.string };
  return { ...gap, string: null };
}

/** With a bit of its own size the interval itself is known; else the hole logged there counts. */
function widestTo(profile: Profile, bit: Stretch, own: Bore | null): WidestBore {
  const reach = own ? bit.top : bit.bottom;
  const { missing } = profile;
  if (missing.top < reach) {
    const bottom = Math.min(missing.bottom, reach);
    return { known: false, missing: { top: missing.top, bottom }, string: missing.string };
  }
  const above = widestAbove(profile, reach);
  const at = own ? { ...bit, of: own } : null;
  const candidates = [above, at].filter((bore) => bore !== null);
  const widest = candidates.reduce<Layer<Bore> | null>(
    (best, bore) => ((bore.of.diameter ?? 0) > (best?.of.diameter ?? 0) ? bore : best),
    null,
  );
  return widest ? { known: true, bore: widest } : { known: false, missing: bit, string: null };
}

function widestAbove({ bores, widest }: Profile, reach: number): Layer<Bore> | null {
  const index = widest[firstStarting(bores, reach) - 1];
  return index === undefined ? null : (bores[index] ?? null);
}
