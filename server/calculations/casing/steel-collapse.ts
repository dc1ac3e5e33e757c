import { type Formula, known, type Outcome } from '../formula.ts';
import { elasticCollapse } from './elastic-collapse.ts';
import { gradedCollapse } from './graded-collapse.ts';
import { ovalCollapse, USUAL_OVALITY } from './oval-collapse.ts';
import { yieldCollapse } from './yield-collapse.ts';

export const about: Formula = {
  name: 'collapse resistance of steel casing',
  text: 'the least of elastic collapse, yield of the wall, collapse by range of D/t, and collapse with an ovality of 1 %',
  source: 'API 5C3 and Timoshenko and Gere, from memory',
  range: 'D / t above 2, yield strength 30,000 to 160,000 psi; a string without dents, holes or lost wall',
  caution:
    'Not a permission: keep a margin, fill the casing before the outside pressure rises, and follow the local code and the maker.',
};

/**
 * Outside pressure that steel casing resists, Pa: the least of its limits. Diameter and wall in m, yield strength in Pa,
 * ovality as a fraction (0.01 when it was not measured).
 *
 * Source: API 5C3 and Timoshenko and Gere, from memory.
 * Worked example: 6.625 × 0.250 in, 35,000 psi: 3,826 psi elastic, 2,542 by yield, 1,738 plastic, 1,278 with 1 % ovality:
 * 1,278 psi = 8.81 MPa.
 */
export function steelCollapse(
  outside: number,
  wall: number,
  yieldStrength: number,
  ovality: number = USUAL_OVALITY,
): Outcome {
  const limits = [
    elasticCollapse(outside, wall),
    yieldCollapse(outside, wall, yieldStrength),
    gradedCollapse(outside, wall, yieldStrength),
    ovalCollapse(outside, wall, yieldStrength, ovality),
  ];
  let least = Number.POSITIVE_INFINITY;
  for (const limit of limits) {
    if (!limit.ok) return limit;
    least = Math.min(least, limit.value);
  }
  return known(least);
}
