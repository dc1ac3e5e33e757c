/** Depth steps to choose from, coarsest first, in metres. */
const steps = [1, 0.5, 0.25, 0.1, 0.05, 0.01] as const;
const finest = 0.01;
const mostRows = 100_000;

const isMultiple = (depth: number, step: number): boolean => Math.abs(depth / step - Math.round(depth / step)) < 1e-6;

/**
 * The coarsest step at which every edge of a stretch is a row, in metres; the finest where none is. A file never gets
 * more rows than can be opened: for a very deep well the step is coarser than its edges ask.
 */
export function stepFor(edges: readonly number[]): number {
  const wanted = steps.find((step) => edges.every((edge) => isMultiple(edge, step))) ?? finest;
  const length = Math.max(...edges) - Math.min(...edges);
  return steps.findLast((step) => step >= wanted && length / step <= mostRows) ?? steps[0];
}

/** True where that step has a row at every edge. */
export const fitsEveryEdge = (edges: readonly number[], step: number): boolean =>
  edges.every((edge) => isMultiple(edge, step));
