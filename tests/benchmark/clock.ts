import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

/** Milliseconds that something takes, with the rubbish of what went before cleared away. */
export async function timed<T>(run: () => Promise<T> | T): Promise<{ ms: number; value: T }> {
  collect();
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
