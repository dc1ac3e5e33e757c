import { type Formula, known, type Outcome, refused } from '../formula.ts';
import { plasticCollapse } from './plastic-collapse.ts';

export const about: Formula = {
  name: 'hydraulic collapse resistance of warm PVC casing',
  text: 'R = k RHCP; RHCP cool resistance, 2 E / ((1 - ν²) DR (DR - 1)²), DR dimension ratio D / t; k by temperature, straight lines between 23 °C 1.00, 27 °C 0.88, 32 °C 0.75, 38 °C 0.62, 43 °C 0.51, 49 °C 0.40, 54 °C 0.31, 60 °C 0.22',
  source: 'ASTM F480 and derating of PVC pressure pipe by temperature (73 to 140 °F), both from memory',
  range: 'DR above 2, up to 60 °C; a short-lived pressure',
  caution:
    'Setting cement can be hotter than PVC has any rating for; its heat depends on the mix, the width of the annulus and the ground. Keep the casing full of water, grout in lifts, measure the heat, and follow the maker and the local code: this figure is no permission.',
};

/** The hottest that PVC casing has a figure for, °C (from memory). */
export const HOTTEST_PVC = 60;

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
  const above = KEPT.findIndex(([at]) => fahrenheit <= at);
  const [hotter, cooler] = [KEPT[above], KEPT[above - 1]];
  if (!hotter) return refused('PVC casing has no rating above 60 °C');
  if (!cooler) return known(hotter[1]);
  const share = (fahrenheit - cooler[0]) / (hotter[0] - cooler[0]);
  return known(cooler[1] + (hotter[1] - cooler[1]) * share);
}

/**
 * Outside pressure that PVC casing resists at a temperature, °C, for a short time, Pa, from its dimension ratio D/t.
 *
 * Worked example: SDR 21 at 60 °C: 0.22 of 111 psi, 24.4 psi = 168 kPa.
 */
export function warmPlasticCollapse(ratio: number, celsius: number): Outcome {
  const cool = plasticCollapse(ratio);
  const kept = warmPvcShare(celsius);
  if (!cool.ok) return cool;
  return kept.ok ? known(cool.value * kept.value) : kept;
}
