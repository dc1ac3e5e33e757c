import type { Layer } from './layers.ts';

/** A layer of one well and the layer of the next that is taken for the same. */
export interface Match {
  readonly left: Layer;
  readonly right: Layer;
}

const materialOf = ({ stratum }: Layer): string | null =>
  stratum.ground === null || stratum.ground.class === 'unknown' ? null : (stratum.principal?.id ?? null);

const isSame = (a: Layer | undefined, b: Layer | undefined): boolean => {
  const [one, other] = [a && materialOf(a), b && materialOf(b)];
  return one != null && one === other;
};

/* Two logs of more layers than this are not compared. */
const mostLayers = 600;

/**
 * The layers of two neighbours that are joined: the most that can be had with materials alike and in the same order from
 * the top (longest common subsequence).
 */
export function matchLayers(left: readonly Layer[], right: readonly Layer[]): Match[] {
  if (left.length > mostLayers || right.length > mostLayers) return [];
  const columns = right.length + 1;
  const longest = new Uint16Array((left.length + 1) * columns);
  const at = (i: number, j: number): number => longest[i * columns + j] ?? 0;
  for (let i = left.length - 1; i >= 0; i -= 1)
    for (let j = right.length - 1; j >= 0; j -= 1)
      longest[i * columns + j] = isSame(left[i], right[j])
        ? at(i + 1, j + 1) + 1
        : Math.max(at(i + 1, j), at(i, j + 1));
  const matches: Match[] = [];
  let [i, j] = [0, 0];
  while (i < left.length && j < right.length) {
    const [a, b] = [left[i], right[j]];
    if (a && b && isSame(a, b)) {
      matches.push({ left: a, right: b });
      [i, j] = [i + 1, j + 1];
    } else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
    else j += 1;
  }
  return matches;
}
