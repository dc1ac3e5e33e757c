/** One reading of a pumping test: seconds since the pump started or stopped, drawdown (or residual drawdown) in m. */
export interface Reading {
  readonly time: number;
  readonly drawdown: number;
}

/** A stretch of time, seconds, its ends included; null leaves an end open. */
export interface Window {
  readonly from: number | null;
  readonly to: number | null;
}

/** The readings within a window, those at no time left out: a logarithm has no zero. */
export function readingsWithin(readings: readonly Reading[], { from, to }: Window): Reading[] {
  return readings.filter(({ time }) => time > 0 && time >= (from ?? 0) && time <= (to ?? Number.POSITIVE_INFINITY));
}
