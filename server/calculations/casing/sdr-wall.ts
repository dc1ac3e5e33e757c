import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'wall of plastic pipe by its dimension ratio',
  text: 't = D / SDR; D outside diameter, m; SDR standard dimension ratio; t least wall, m',
  source: 'ASTM F480, definition of SDR (from memory)',
  range: 'SDR above 2',
  caution: null,
};

/**
 * Least wall of plastic pipe, m, from its outside diameter, m, and its standard dimension ratio: t = D / SDR.
 *
 * Valid for SDR > 2, below which there is no bore. Source: ASTM F480 (definition, from memory).
 * Worked example: 4.500 in, SDR 26: 0.173 in = 4.396 mm.
 */
export function wallOfSdr(outside: number, sdr: number): Outcome {
  if (!(sdr > 2)) return refused('a dimension ratio of 2 or less leaves no bore');
  if (!(outside > 0)) return refused('the outside diameter is not above zero');
  return known(outside / sdr);
}

/** Dimension ratio of a pipe, D / t, both in m. Worked example: 4.500 in with 0.173 in: 26.0. */
export function dimensionRatio(outside: number, wall: number): Outcome {
  if (!(wall > 0)) return refused('the wall has no thickness');
  if (!(outside > 2 * wall)) return refused('two walls are as thick as the pipe is wide');
  return known(outside / wall);
}
