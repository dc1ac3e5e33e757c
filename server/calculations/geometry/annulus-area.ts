import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'annulus, volume for each unit of length',
  text: 'A = π/4 (D² - d²); D inside of the outer wall, m; d outside of the string, m; A m³ per m of length',
  source: 'geometry; US form 0.0054542 (D² - d²) ft³/ft with D and d in inches',
  range: 'D greater than d, d not below 0',
  caution: null,
};

/**
 * Volume of an annulus for each unit of length: the area of the outer circle less that of the inner one.
 *
 * A = π/4 (D² − d²), D and d in m, A in m² (m³ per m). d = 0 gives an open hole.
 * Valid for D > d ≥ 0. Source: geometry.
 * Worked example: 10 in hole, 6.625 in casing: 0.02843 m³/m = 28.43 L/m = 0.3060 ft³/ft = 2.289 US gal/ft.
 */
export function annulusArea(outer: number, inner: number): Outcome {
  if (!(inner >= 0)) return refused('the inner diameter is below zero');
  if (!(outer > inner)) return refused('the string is as wide as the wall around it, so there is no annulus');
  return known((Math.PI / 4) * (outer * outer - inner * inner));
}
