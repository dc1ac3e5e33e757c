import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'strength that warm PVC keeps',
  text: 'k by temperature, straight lines between 23 °C 1.00, 27 °C 0.88, 32 °C 0.75, 38 °C 0.62, 43 °C 0.51, 49 °C 0.40, 54 °C 0.31, 60 °C 0.22',
  source: 'derating of PVC pressure pipe by temperature (73 to 140 °F), from memory',
  range: 'up to 60 °C',
  caution:
    'The heat of setting cement depends on the mix, the width of the annulus and the ground: measure, do not guess.',
};

/** Temperature, °F, and the share of strength kept. */
const KEPT: readonly (readonly [number, number])[] = [
  [73, 1],
  [80, 0.88],
  [90, 0.75],
  [100, 0.62],
  [110, 0.51],
  [120, 0.4],
  [130, 0.31],
  [140, 0.22],
];

/**
 * Share of its cool strength that PVC keeps at a temperature, °C; no unit. Cooler than 23 °C keeps all of it.
 *
 * Source: derating table of PVC pressure pipe, from memory. Refused above 60 °C, where PVC casing has no rating.
 * Worked example: 37.8 °C (100 °F): 0.62.
 */
export function warmPvcShare(celsius: number): Outcome {
  const fahrenheit = (celsius * 9) / 5 + 32;
  if (Number.isNaN(fahrenheit)) return refused('the temperature is not a number');
  let [coolerAt, coolerKept] = [Number.NEGATIVE_INFINITY, 1];
  for (const [at, kept] of KEPT) {
    if (fahrenheit <= at) {
      return known(
        coolerKept === kept ? kept : coolerKept + ((kept - coolerKept) * (fahrenheit - coolerAt)) / (at - coolerAt),
      );
    }
    [coolerAt, coolerKept] = [at, kept];
  }
  return refused('PVC casing has no rating above 60 °C');
}
