import { type Formula, known, type Outcome, refused } from '../formula.ts';

export const about: Formula = {
  name: 'grout required with an allowance',
  text: 'V = Va (1 + a); Va volume of the annulus, m³; a allowance as a fraction',
  source: 'Wisconsin NR 812.20(3)(e)1 asks for 15 % more than the annulus',
  range: 'a not below 0',
  caution: 'Order more than the figure: a void or a loss takes grout that no formula knows of.',
};

/**
 * Volume of grout to have on hand: the bare annulus and an allowance on top.
 *
 * V = Va (1 + a), volumes in m³, a as a fraction (0.15 for 15 %). Valid for Va ≥ 0, a ≥ 0.
 * Source: Wisconsin NR 812.20(3)(e)1 for the 15 %.
 * Worked example: 19.89 ft³ with 15 % is 22.88 ft³.
 */
export function requiredGrout(annulus: number, allowance: number): Outcome {
  if (!(annulus >= 0)) return refused('the volume of the annulus is below zero');
  if (!(allowance >= 0)) return refused('the allowance is below zero');
  return known(annulus * (1 + allowance));
}
