import type { Stretch } from '../intervals.ts';

/** A stretch of depth that belongs to something. */
export interface Layer<T> extends Stretch {
  readonly of: T;
}

/**
 * Lays stretches over each other, the first on top: what is seen at each depth, from the top down, without overlap.
 * Cost n log n in the number of stretches.
 */
export function layered<T>(layers: readonly Layer<T>[]): Layer<T>[] {
  const sound = layers.filter((layer) => layer.bottom > layer.top);
  const cuts = [...new Set(sound.flatMap((layer) => [layer.top, layer.bottom]))].sort((a, b) => a - b);
  const place = new Map(cuts.map((depth, index) => [depth, index]));
  const owners = new Array<Layer<T> | undefined>(cuts.length);
  const free = cuts.map((_, index) => index);
  for (const layer of sound) paint(layer, place.get(layer.top) ?? 0, place.get(layer.bottom) ?? 0, owners, free);
  return joined(cuts, owners);
}

/** Gives the cells that are still free between two cuts to a layer. */
function paint<T>(layer: Layer<T>, from: number, to: number, owners: (Layer<T> | undefined)[], free: number[]): void {
  for (let cell = firstFree(free, from); cell < to; cell = firstFree(free, cell + 1)) {
    owners[cell] = layer;
    free[cell] = cell + 1;
  }
}

/** The first free cell from `cell` on; the way there is shortened as it is walked. */
function firstFree(free: number[], cell: number): number {
  let at = cell;
  for (let next = free[at]; next !== undefined && next !== at; next = free[at]) {
    const beyond = free[next];
    if (beyond !== undefined) free[at] = beyond;
    at = next;
  }
  return at;
}

function joined<T>(cuts: readonly number[], owners: readonly (Layer<T> | undefined)[]): Layer<T>[] {
  const seen: Layer<T>[] = [];
  for (let cell = 0; cell + 1 < cuts.length; cell += 1) {
    const owner = owners[cell];
    if (!owner) continue;
    const last = seen.at(-1);
    const [top, bottom] = [cuts[cell] ?? 0, cuts[cell + 1] ?? 0];
    if (last && last.of === owner.of && last.bottom === top) seen[seen.length - 1] = { ...last, bottom };
    else seen.push({ top, bottom, of: owner.of });
  }
  return seen;
}

/** The part of `layers` (sorted, without overlap) that lies within a stretch, cut to it. */
export function within<T>(layers: readonly Layer<T>[], { top, bottom }: Stretch): Layer<T>[] {
  const cut: Layer<T>[] = [];
  for (let at = firstBelow(layers, top); at < layers.length; at += 1) {
    const layer = layers[at];
    if (!layer || layer.top >= bottom) break;
    cut.push({ top: Math.max(top, layer.top), bottom: Math.min(bottom, layer.bottom), of: layer.of });
  }
  return cut;
}

/** How many layers (sorted, without overlap) a stretch touches. */
export const countWithin = <T>(layers: readonly Layer<T>[], { top, bottom }: Stretch): number =>
  Math.max(0, firstStarting(layers, bottom) - firstBelow(layers, top));

/** Index of the first layer whose top lies at a depth or below it. */
export function firstStarting<T>(layers: readonly Layer<T>[], depth: number): number {
  let [low, high] = [0, layers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((layers[middle]?.top ?? 0) >= depth) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Index of the first layer whose bottom lies below a depth. */
function firstBelow<T>(layers: readonly Layer<T>[], depth: number): number {
  let [low, high] = [0, layers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((layers[middle]?.bottom ?? 0) > depth) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The parts of a stretch that no layer covers; `layers` sorted, without overlap. */
export function uncovered<T>(layers: readonly Layer<T>[], { top, bottom }: Stretch): Stretch[] {
  const gaps: Stretch[] = [];
  let at = top;
  for (const layer of within(layers, { top, bottom })) {
    if (layer.top > at) gaps.push({ top: at, bottom: layer.top });
    at = layer.bottom;
  }
  if (bottom > at) gaps.push({ top: at, bottom });
  return gaps;
}
