/** Milliseconds that something takes. */
export async function timed<T>(run: () => Promise<T> | T): Promise<{ ms: number; value: T }> {
  const begun = performance.now();
  const value = await run();
  return { ms: performance.now() - begun, value };
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const [low, high] = sorted.length % 2 === 1 ? [sorted[half], sorted[half]] : [sorted[half - 1], sorted[half]];
  return ((low ?? Number.NaN) + (high ?? Number.NaN)) / 2;
}
