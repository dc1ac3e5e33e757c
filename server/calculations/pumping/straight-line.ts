import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'straight line by least squares',
  text: 'y = a + b x; b = ∑ (x - x̄)(y - ȳ) / ∑ (x - x̄)²; a = ȳ - b x̄; misfit = √(∑ (y - a - b x)² / n)',
  source: 'method of least squares',
  range: 'two different x at least',
  caution: null,
};

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly intercept: number;
  readonly slope: number;
  /** Root mean square of the distances in y. */
  readonly misfit: number;
  readonly points: number;
}

/**
 * The straight line that leaves the least sum of squares in y. Refused for fewer than two different x.
 *
 * Source: method of least squares. Worked example: (1, 1), (2, 3), (3, 5): y = −1 + 2x, misfit 0.
 */
export function straightLine(points: readonly Point[]): Outcome<Line> {
  const count = points.length;
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / count;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / count;
  const spread = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  if (!(spread > 0)) return refused('a straight line needs two readings that differ');
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spread;
  const intercept = meanY - slope * meanX;
  return known({
    intercept,
    slope,
    misfit: rootMeanSquare(points.map(({ x, y }) => y - intercept - slope * x)),
    points: count,
  });
}

/** Root mean square of residuals; 0 for none. */
export function rootMeanSquare(residuals: readonly number[]): number {
  if (residuals.length === 0) return 0;
  return Math.sqrt(residuals.reduce((sum, residual) => sum + residual ** 2, 0) / residuals.length);
}
