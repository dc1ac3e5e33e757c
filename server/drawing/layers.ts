import type { Depth, Stratum } from '../model/log.ts';

/** How sure a contact is: drawn full, dashed, or dashed with a query. */
export type Contact = 'sharp' | 'approximate' | 'doubtful';

/** A layer with its place in metres below ground, the top never below the bottom. */
export interface Layer {
  readonly stratum: Stratum;
  readonly top: number;
  readonly bottom: number;
  readonly topContact: Contact;
  readonly bottomContact: Contact;
}

const known = (depth: Depth | null): number | null =>
  depth !== null && depth.value !== null && Number.isFinite(depth.value) ? depth.value : null;

function contactOf(depth: Depth | null): Contact {
  if (known(depth) === null || depth?.doubtful) return 'doubtful';
  return depth?.approximate ? 'approximate' : 'sharp';
}

/** For each layer, the first known top among those that follow. */
function topsBelow(strata: readonly Stratum[]): (number | null)[] {
  let next: number | null = null;
  return strata
    .toReversed()
    .map((stratum) => {
      const below = next;
      next = known(stratum.interval.top) ?? next;
      return below;
    })
    .toReversed();
}

/** Where a layer of unknown base may end: at the next known top below, or at the bottom of the hole. */
function baseBelow(top: number, nextTop: number | null, hole: number | null): number | null {
  const base = nextTop ?? hole;
  return base !== null && base > top ? base : null;
}

function placed(stratum: Stratum, top: number, bottom: number): Layer {
  const { interval } = stratum;
  const isReversed = top > bottom;
  return {
    stratum,
    top: Math.min(top, bottom),
    bottom: Math.max(top, bottom),
    topContact: isReversed ? 'doubtful' : contactOf(interval.top),
    bottomContact: isReversed ? 'doubtful' : contactOf(interval.bottom),
  };
}

export interface PlacedLayers {
  /** In the order of their tops. */
  readonly layers: readonly Layer[];
  /** Layers that no depth is known of. */
  readonly unplaced: readonly Stratum[];
}

/**
 * Every layer with a place. One whose top or base is not known reaches to its neighbour, or to the bottom of the hole,
 * with a doubtful contact; one with neither stays out.
 */
export function placeLayers(strata: readonly Stratum[], hole: number | null): PlacedLayers {
  const layers: Layer[] = [];
  const unplaced: Stratum[] = [];
  const nextTops = topsBelow(strata);
  let above: number | null = 0;
  strata.forEach((stratum, index) => {
    const top = known(stratum.interval.top) ?? above;
    const bottom =
      known(stratum.interval.bottom) ?? (top === null ? null : baseBelow(top, nextTops[index] ?? null, hole));
    if (top === null || bottom === null) unplaced.push(stratum);
    else layers.push(placed(stratum, top, bottom));
    above = known(stratum.interval.bottom);
  });
  return { layers: layers.sort((a, b) => a.top - b.top || a.bottom - b.bottom), unplaced };
}

/* Depths closer than this are one, in metres: rounding of feet. */
const sameDepth = 0.005;

/** Stretches between the layers, and below them down to the bottom of the hole, of which no ground is logged. */
export function gapsOf(layers: readonly Layer[], hole: number | null): { top: number; bottom: number }[] {
  const gaps: { top: number; bottom: number }[] = [];
  let reached = 0;
  for (const { top, bottom } of [...layers, { top: hole ?? 0, bottom: hole ?? 0 }]) {
    if (top - reached > sameDepth) gaps.push({ top: reached, bottom: top });
    reached = Math.max(reached, bottom);
  }
  return layers.length === 0 ? [] : gaps;
}
